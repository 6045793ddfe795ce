package undercroft.view.shelf;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import undercroft.view.kit.BottleCanvas;

/** A plank with its crates; crates that do not fit stand on a further plank below. */
final class PlankView extends Region {
    static final double FACE = 22;
    private static final double GAP = 10;
    private static final double EDGE = 10;
    private static final double MOST_GROWTH = 1.15;
    private static final double ROW_GAP = 12;
    private static final double EMPTY_HEIGHT = 30;
    private static final double ROW = BottleCanvas.HEIGHT + FACE + CrateView.LABEL_HEIGHT;

    private final List<CrateView> crates;
    private final List<Region> faces = new ArrayList<>();
    private final Node title;
    private final Label climate = new Label();
    private final Label empty = new Label();

    /** {@code title} stands on the left of the plank's face, {@code climateText} on the right. */
    PlankView(Node title, String climateText, String emptyText, List<CrateView> crates) {
        this.crates = List.copyOf(crates);
        this.title = title;
        climate.setText(climateText);
        climate.getStyleClass().add("plank-climate");
        empty.setText(crates.isEmpty() ? emptyText : "");
        empty.getStyleClass().add("plank-empty");
        getStyleClass().add("plank");
        addFace();
        getChildren().addAll(crates);
        getChildren().addAll(empty, title, climate);
    }

    private void addFace() {
        Region face = new Region();
        face.getStyleClass().add("plank-face");
        faces.add(face);
        getChildren().add(0, face);
    }

    private List<List<CrateView>> rows(double width) {
        List<List<CrateView>> rows = new ArrayList<>();
        double room = 0;
        for (CrateView crate : crates) {
            double wanted = Math.min(crate.leastWidth(), width - 2 * EDGE);
            if (rows.isEmpty() || wanted > room) {
                rows.add(new ArrayList<>());
                room = width - 2 * EDGE;
            }
            rows.get(rows.size() - 1).add(crate);
            room -= wanted + GAP;
        }
        return rows;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        int rows = rows(width <= 0 ? getWidth() : width).size();
        return rows == 0 ? EMPTY_HEIGHT + FACE : rows * ROW + (rows - 1) * ROW_GAP;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 400;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 160;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        List<List<CrateView>> rows = rows(width);
        while (faces.size() < rows.size()) {
            addFace();
        }
        double top = rows.isEmpty() ? EMPTY_HEIGHT : BottleCanvas.HEIGHT;
        for (int i = 0; i < faces.size(); i++) {
            faces.get(i).setVisible(i < Math.max(1, rows.size()));
            faces.get(i).resizeRelocate(0, top + i * (ROW + ROW_GAP), width, FACE);
        }
        double y = 0;
        for (List<CrateView> row : rows) {
            placeRow(row, y, width);
            y += ROW + ROW_GAP;
        }
        double climateWidth = Math.min(climate.prefWidth(-1), width / 2);
        climate.resizeRelocate(width - climateWidth - EDGE, top, climateWidth, FACE);
        double titleWidth = Math.min(title.prefWidth(-1), width - climateWidth - 3 * EDGE);
        title.resizeRelocate(EDGE, top, titleWidth, FACE);
        empty.resizeRelocate(EDGE, 0, width - 2 * EDGE, EMPTY_HEIGHT);
    }

    /** Crates too wide for the row shrink alike towards their least width; room that is left over makes them grow a little. */
    private static void placeRow(List<CrateView> row, double y, double width) {
        double room = width - 2 * EDGE - (row.size() - 1) * GAP;
        double wanted = row.stream().mapToDouble(CrateView::wantedWidth).sum();
        double least = row.stream().mapToDouble(CrateView::leastWidth).sum();
        double x = EDGE;
        for (CrateView crate : row) {
            double crateWidth = room >= wanted
                    ? crate.wantedWidth() * Math.min(MOST_GROWTH, room / wanted)
                    : crate.leastWidth()
                            + (crate.wantedWidth() - crate.leastWidth()) * (room - least) / (wanted - least);
            crateWidth = Math.floor(Math.min(crateWidth, width - 2 * EDGE));
            crate.resizeRelocate(x, y, crateWidth, ROW);
            x += crateWidth + GAP;
        }
    }
}
