package undercroft.view.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import javafx.css.PseudoClass;
import javafx.scene.layout.Region;
import undercroft.app.shelf.ShelfPlan;

/** Headings and crates from top to bottom, each crate as high as its rows of the season beside it. */
final class ShelfBoard extends Region {
    static final double LANE = 30;
    static final double ROW = 46;
    private static final double FOOT = 12;

    private static final PseudoClass DROP = PseudoClass.getPseudoClass("drop");

    private record Part(Region node, double height, String placeId) {}

    private final List<Part> parts = new ArrayList<>();
    private final List<CrateView> crates = new ArrayList<>();
    private double headWidth;

    void clear() {
        parts.clear();
        crates.clear();
        getChildren().clear();
    }

    /** {@code placeId} is empty for what stands in no place. */
    void heading(PlaceHeading heading, String placeId) {
        add(heading, LANE, placeId);
    }

    void crates(List<CrateView> views, ToIntFunction<ShelfPlan.Crate> rows, String placeId) {
        for (CrateView view : views) {
            crates.add(view);
            add(view, Math.max(1, rows.applyAsInt(view.crate())) * ROW, placeId);
        }
    }

    void note(Region node, double height) {
        add(node, height, "");
    }

    private void add(Region node, double height, String placeId) {
        parts.add(new Part(node, height, placeId));
        getChildren().add(node);
    }

    /** The place at a height of the board. */
    Optional<String> placeAt(double y) {
        double bottom = 0;
        for (Part part : parts) {
            bottom += part.height();
            if (y < bottom) {
                return Optional.of(part.placeId()).filter(place -> !place.isEmpty());
            }
        }
        return Optional.empty();
    }

    /** Shows where what is dragged would be put down. */
    void showDrop(Optional<String> placeId) {
        for (Part part : parts) {
            boolean is = placeId.filter(part.placeId()::equals).isPresent();
            part.node().pseudoClassStateChanged(DROP, is);
        }
    }

    List<CrateView> crates() {
        return crates;
    }

    /** The rest of the width is the season's. */
    void setHeadWidth(double width) {
        headWidth = width;
        requestLayout();
    }

    double headWidth() {
        return Math.min(headWidth, getWidth());
    }

    @Override
    protected double computePrefHeight(double width) {
        return parts.stream().mapToDouble(Part::height).sum() + FOOT;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double y = 0;
        for (Part part : parts) {
            part.node().resizeRelocate(0, y, headWidth(), part.height());
            y += part.height();
        }
    }
}
