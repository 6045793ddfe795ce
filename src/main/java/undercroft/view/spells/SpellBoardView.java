package undercroft.view.spells;

import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import undercroft.app.spells.SpellsViewModel;
import undercroft.app.spells.SpellsViewModel.Step;
import undercroft.picture.BoardPicture;
import undercroft.picture.SpellBoard;
import undercroft.plot.mark.Palette;
import undercroft.view.kit.CanvasPen;
import undercroft.view.kit.FontMeasure;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.AlertWords;
import undercroft.wording.QuantityFormat;

/** The board of spells, drawn; arrows and clicks choose a spell, Enter and a double click open its batch. */
final class SpellBoardView extends Region {
    private final SpellsViewModel model;
    private final Supplier<QuantityFormat> format;
    private final Runnable open;
    private final Canvas canvas = new Canvas();
    private final FontMeasure measure = new FontMeasure();
    private Palette palette = Palette.LIGHT;
    private BoardPicture picture;

    /** {@code whenChosen} gets the chosen mark's place on the board, to scroll to it. */
    SpellBoardView(
            SpellsViewModel model,
            Supplier<QuantityFormat> format,
            Runnable open,
            Consumer<SpellBoardView> whenChosen) {
        this.model = model;
        this.format = format;
        this.open = open;
        getStyleClass().add("spell-board");
        setId("spell-board");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.LIST_VIEW);
        getChildren().add(canvas);
        model.boardProperty().addListener((property, before, after) -> requestLayout());
        model.chosenProperty().addListener((property, before, after) -> {
            tell();
            requestLayout();
            whenChosen.accept(this);
        });
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        tell();
    }

    void setPalette(Palette newPalette) {
        palette = newPalette;
        requestLayout();
    }

    private void tell() {
        SpellBoard.Mark mark = model.chosenProperty().get();
        if (mark == null) {
            setAccessibleText(format.get().messages().of("spells.board.sentence"));
            return;
        }
        String place = model.pageProperty().get() == null
                ? mark.spell().place().name()
                : model.pageProperty().get().title();
        setAccessibleText(new AlertWords(format.get().messages())
                .before(
                        mark.impact().alert(),
                        format.get()
                                .messages()
                                .of("spells.board.chosen", mark.impact().batchName(), place)));
    }

    private void press(MouseEvent event) {
        requestFocus();
        if (picture != null) {
            picture.at(event.getX(), event.getY()).ifPresent(mark -> {
                model.choose(mark);
                if (event.getClickCount() == 2) {
                    open.run();
                }
            });
        }
    }

    private void key(KeyEvent event) {
        Shortcut.of(Shortcut.Field.SPELLS, event).ifPresent(pressed -> {
            switch (pressed) {
                case SPELL_EARLIER -> model.move(Step.EARLIER);
                case SPELL_LATER -> model.move(Step.LATER);
                case SPELL_ABOVE -> model.move(Step.UP);
                case SPELL_BELOW -> model.move(Step.DOWN);
                default -> open.run();
            }
            event.consume();
        });
    }

    /** Top and bottom of the chosen row, as shares of the board's height. */
    double chosenMiddle() {
        SpellBoard.Mark mark = model.chosenProperty().get();
        return picture == null || mark == null
                ? 0
                : picture.frameOf(mark)
                        .map(frame -> (frame.y() + frame.height() / 2) / Math.max(1, getHeight()))
                        .orElse(0.0);
    }

    @Override
    protected double computePrefHeight(double width) {
        SpellBoard board = model.boardProperty().get();
        return board == null ? 0 : BoardPicture.height(board);
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
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        canvas.setWidth(width);
        canvas.setHeight(height);
        GraphicsContext graphics = canvas.getGraphicsContext2D();
        graphics.clearRect(0, 0, width, height);
        SpellBoard board = model.boardProperty().get();
        if (board != null && !board.isEmpty() && width > 0) {
            picture = BoardPicture.of(board, model.chosenProperty().get(), width, format.get(), measure);
            picture.drawWith(new CanvasPen(graphics, palette));
        }
    }
}
