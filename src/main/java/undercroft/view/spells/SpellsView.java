package undercroft.view.spells;

import java.time.Instant;
import java.util.function.BiConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.spells.SpellPage;
import undercroft.app.spells.SpellsViewModel;
import undercroft.app.spells.WhatIfViewModel;
import undercroft.cellar.Cellar;
import undercroft.plot.PlotStack;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.SavedFiles;
import undercroft.view.kit.WindowContext;
import undercroft.wording.QuantityFormat;

/** The page of warm and cold spells: the board and the place's temperature on the left, what to do on the right. */
public final class SpellsView extends HBox {
    private static final double SIDE_SHARE = 0.38;
    private static final double SIDE_LEAST = 430;
    private static final double SIDE_MOST = 640;
    private static final double PLOT_HEIGHT = 210;
    private static final double LEAST_BOARD_HEIGHT = 90;
    private static final double BOARD_FRAME = 12;

    private final WindowContext context;
    private final SpellsViewModel model;
    private final BiConsumer<String, Instant> openBatch;
    private final PlotsView plot;
    private final ImpactsView impacts;
    private final WhatIfViewModel supposing;
    private final ScrollPane boardScroll = new ScrollPane();
    private boolean isSupposing;
    private boolean tabChosen;

    /** {@code openBatch} turns to a batch as it was at an instant. */
    public SpellsView(WindowContext context, BiConsumer<String, Instant> openBatch) {
        this.context = context;
        this.plot = new PlotsView(context.messages(), instant -> format().dayAndTime(Instant.ofEpochSecond(instant)));
        PlotMenu.on(plot, context, context.messages(), () -> context.messages().of("spells.board.title"));
        this.openBatch = openBatch;
        this.model = new SpellsViewModel(context.messages(), context.forecasts().outlookProperty());
        this.supposing =
                new WhatIfViewModel(context.messages(), context.workspace(), context.forecasts(), context.clock());
        this.impacts = new ImpactsView(context.messages(), new SavedFiles(context, context.messages()), openBatch);
        getStyleClass().addAll("middle", "spells-page");
        SpellBoardView board = new SpellBoardView(model, this::format, this::openChosen, this::scrollTo);
        StackPane left = new StackPane(main(board), nothing());
        left.getChildren()
                .get(1)
                .visibleProperty()
                .bind(left.getChildren().get(0).visibleProperty().not());
        HBox.setHgrow(left, Priority.ALWAYS);
        Region side = side(context);
        side.setMinWidth(SIDE_LEAST);
        side.setMaxWidth(SIDE_MOST);
        side.prefWidthProperty().bind(widthProperty().multiply(SIDE_SHARE));
        getChildren().addAll(left, side);
        context.dark().addListener((property, before, after) -> paint(board, after));
        paint(board, context.dark().get());
        model.pageProperty().addListener((property, before, after) -> show(before, after));
        model.boardProperty()
                .addListener((property, before, after) ->
                        left.getChildren().get(0).setVisible(after != null && !after.isEmpty()));
        left.getChildren()
                .get(0)
                .setVisible(model.boardProperty().get() != null
                        && !model.boardProperty().get().isEmpty());
        supposing.pictureProperty().addListener((property, before, after) -> draw(false));
        show(null, model.pageProperty().get());
    }

    private QuantityFormat format() {
        Cellar cellar = context.workspace().getCellar();
        return QuantityFormat.of(context.messages(), cellar.settings().units(), cellar.zone());
    }

    private Node main(SpellBoardView board) {
        Label title = new Label(context.messages().of("spells.board.title"));
        title.getStyleClass().add("section-title");
        Label hint = new Label(context.messages().of("spells.board.hint"));
        hint.getStyleClass().add("faint");
        hint.setWrapText(true);
        hint.setMinHeight(Region.USE_PREF_SIZE);
        VBox head = new VBox(2, title, hint);
        boardScroll.setContent(board);
        boardScroll.setFitToWidth(true);
        boardScroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        boardScroll.getStyleClass().add("spell-board-scroll");
        boardScroll.setMinHeight(LEAST_BOARD_HEIGHT);
        boardScroll.prefHeightProperty().bind(board.heightProperty().add(BOARD_FRAME));
        boardScroll.setMaxHeight(Region.USE_PREF_SIZE);
        VBox.setVgrow(plot, Priority.ALWAYS);
        plot.setId("spell-plot");
        plot.setMinHeight(PLOT_HEIGHT);
        plot.setPrefHeight(PLOT_HEIGHT);
        Label readout = new Label();
        readout.getStyleClass().add("faint");
        readout.textProperty().bind(plot.readoutProperty());
        VBox main = new VBox(8, head, boardScroll, plot, readout);
        main.getStyleClass().add("spells-main");
        return main;
    }

    private Region side(WindowContext context) {
        ToggleGroup group = new ToggleGroup();
        ToggleButton spell = tab("spells.tab.spell", "tab-spell", group);
        ToggleButton whatIf = tab("spells.tab.what-if", "tab-what-if", group);
        ScrollPane shown = new ScrollPane();
        shown.setFitToWidth(true);
        shown.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        shown.getStyleClass().add("spells-side");
        VBox.setVgrow(shown, Priority.ALWAYS);
        WhatIfView panel = new WhatIfView(supposing, context);
        group.selectedToggleProperty().addListener((property, before, after) -> {
            if (after == null) {
                group.selectToggle(before);
                return;
            }
            shown.setContent(after == whatIf ? panel : impacts);
            shown.setVvalue(0);
            isSupposing = after == whatIf;
            draw(false);
        });
        group.selectToggle(model.pageProperty().get() == null ? whatIf : spell);
        // The first spell may come only when what was brought in is worked out; a choice of the person's stays.
        whatIf.setOnAction(event -> tabChosen = true);
        spell.setOnAction(event -> tabChosen = true);
        model.pageProperty().addListener((property, before, after) -> {
            if (before == null && after != null && !tabChosen) {
                group.selectToggle(spell);
            }
        });
        HBox tabs = new HBox(4, spell, whatIf);
        tabs.getStyleClass().add("page-links");
        VBox side = new VBox(tabs, shown);
        side.getStyleClass().add("spells-card");
        return side;
    }

    private ToggleButton tab(String key, String id, ToggleGroup group) {
        ToggleButton tab = new ToggleButton(context.messages().of(key));
        tab.setId(id);
        tab.setToggleGroup(group);
        tab.getStyleClass().add("page-link");
        return tab;
    }

    private Node nothing() {
        Label title = new Label(context.messages().of("spells.none.title"));
        title.getStyleClass().add("section-title");
        Label text = new Label(context.messages().of("spells.none.text"));
        text.setWrapText(true);
        text.setMaxWidth(420);
        text.getStyleClass().add("faint");
        VBox nothing = new VBox(6, title, text);
        nothing.setAlignment(Pos.CENTER);
        nothing.setId("spells-none");
        return nothing;
    }

    private void paint(SpellBoardView board, boolean dark) {
        board.setPalette(Looks.palette(dark));
        plot.setPalette(Looks.palette(dark));
    }

    private void show(SpellPage before, SpellPage page) {
        impacts.show(page);
        draw(before != null && page != null && before.title().equals(page.title()));
    }

    /** The plot follows the side: the chosen spell's place, or what would become of the chosen batch. */
    private void draw(boolean keepsView) {
        SpellPage page = model.pageProperty().get();
        PlotStack supposed = supposing.pictureProperty().get();
        if (isSupposing && supposed != null) {
            plot.show(supposed, supposed.until(), false);
        } else if (page != null && page.picture().isPresent()) {
            plot.show(page.picture().get(), page.usualUntil(), keepsView);
        }
    }

    private void scrollTo(SpellBoardView board) {
        boardScroll.setVvalue(board.chosenMiddle());
    }

    private void openChosen() {
        SpellPage page = model.pageProperty().get();
        if (page != null) {
            page.groups().stream()
                    .flatMap(group -> group.lines().stream())
                    .filter(SpellPage.Line::isChosen)
                    .findFirst()
                    .ifPresent(line -> openBatch.accept(line.batchId(), line.worst()));
        }
    }
}
