package undercroft.view.shelf;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import undercroft.picture.Season;
import undercroft.picture.SeasonPicture;
import undercroft.picture.SeasonRow;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Picture;
import undercroft.plot.scale.TimeScale;
import undercroft.view.kit.CanvasPen;
import undercroft.view.kit.FontMeasure;
import undercroft.wording.ShelfWords;

/** The season beside the crates: as high as the window, drawn at the height it is scrolled to, under an axis that stays. */
final class SeasonCanvas extends Canvas {
    private static final long CLOSEST_SECONDS = 7L * 86_400;
    private static final long FURTHEST_AHEAD = 2L * 366 * 86_400;

    private static final double WHOLE_WIDTH = 1100;

    private final FontMeasure measure = new FontMeasure();
    private final SeasonPicture.Sizes sizes;
    private Season season;
    private ShelfWords words;
    private Palette palette = Palette.LIGHT;
    private SeasonPicture picture;
    private double pictureWidth;
    private long from;
    private long until;
    private boolean looked;

    SeasonCanvas(SeasonPicture.Sizes sizes) {
        this.sizes = sizes;
        setMouseTransparent(true);
        setManaged(false);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    /** Shows another season; the stretch of time a person chose stays. */
    void show(Season newSeason, ShelfWords newWords, Palette newPalette) {
        season = newSeason;
        words = newWords;
        palette = newPalette;
        long rows =
                season.lanes().stream().mapToLong(lane -> lane.rows().size()).sum();
        setAccessibleText(words.of("season.spoken", rows, season.lanes().size()));
        picture = null;
        if (!looked && !season.isEmpty()) {
            from = season.usualFrom();
            until = season.usualUntil();
        }
    }

    /** Whether another stretch of time is looked at than the usual one. */
    boolean isMoved() {
        return looked;
    }

    void showUsual() {
        looked = false;
        from = season.usualFrom();
        until = season.usualUntil();
        picture = null;
    }

    /** Shows less time or more, about a point on the canvas. */
    void zoom(double x, double factor) {
        if (picture != null) {
            look(picture.picture().time().zoomedAbout(x, factor));
        }
    }

    void pan(double pixels) {
        if (picture != null) {
            look(picture.picture().time().pannedBy(pixels));
        }
    }

    private void look(TimeScale wanted) {
        long least = Math.min(season.usualFrom(), earliest());
        long most = season.now() + FURTHEST_AHEAD;
        long seconds = Math.max(CLOSEST_SECONDS, Math.min(most - least, wanted.until() - wanted.from()));
        from = Math.max(least, Math.min(most - seconds, wanted.from()));
        until = from + seconds;
        looked = true;
        picture = null;
    }

    private long earliest() {
        return season.lanes().stream()
                .flatMap(lane -> lane.rows().stream())
                .mapToLong(SeasonRow::capped)
                .min()
                .orElse(season.now());
    }

    /** Draws the part from {@code top} on; the axis stays at the top. */
    void draw(double width, double height, double top) {
        setWidth(Math.max(0, Math.floor(width)));
        setHeight(Math.max(0, Math.floor(height)));
        GraphicsContext canvas = getGraphicsContext2D();
        canvas.clearRect(0, 0, getWidth(), getHeight());
        if (season == null || season.isEmpty() || getWidth() < 120 || getHeight() <= sizes.axis()) {
            return;
        }
        if (picture == null || pictureWidth != getWidth()) {
            picture = SeasonPicture.of(season, from, until, getWidth(), sizes, measure, words);
            pictureWidth = getWidth();
        }
        part(canvas, sizes.axis(), getHeight(), -top);
        part(canvas, 0, sizes.axis(), 0);
    }

    /** All of it with the names of its rows, for the stretch of time that is looked at; empty while there is none. */
    Optional<Picture> whole() {
        return season == null || season.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        SeasonPicture.of(season, from, until, WHOLE_WIDTH, SeasonPicture.Sizes.USUAL, measure, words)
                                .picture());
    }

    private void part(GraphicsContext canvas, double clipTop, double clipBottom, double shift) {
        canvas.save();
        canvas.beginPath();
        canvas.rect(0, clipTop, getWidth(), clipBottom - clipTop);
        canvas.clip();
        canvas.translate(0, shift);
        picture.picture().drawWith(new CanvasPen(canvas, palette));
        canvas.restore();
    }

    /** The row at a height of the whole picture, its axis included. */
    Optional<SeasonRow> rowAt(double y) {
        return picture == null ? Optional.empty() : picture.at(1, y);
    }

    Optional<Frame> frameOf(SeasonRow row) {
        return picture == null ? Optional.empty() : picture.frameOf(row.batchId(), row.lotId());
    }

    long from() {
        return from;
    }

    long until() {
        return until;
    }
}
