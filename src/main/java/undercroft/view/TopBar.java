package undercroft.view;

import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import undercroft.app.TimeViewModel;
import undercroft.cellar.Settings;
import undercroft.quantity.UnitSystem;
import undercroft.session.Workspace;
import undercroft.view.help.HelpWindow;
import undercroft.view.kit.CellarChooser;
import undercroft.view.kit.Widths;
import undercroft.view.kit.WindowContext;
import undercroft.view.start.LanguageMenu;

/** Name of the cellar, the day looked at, undo, units and colours. */
final class TopBar extends HBox {
    private static final String UNDO_SIGN = "↩";
    private static final String REDO_SIGN = "↪";

    private final WindowContext context;
    private final Button undo;
    private final Button redo;
    /** How wide all of it wanted to be when it was fitted last. */
    private double fitted = -1;

    TopBar(WindowContext context, TimeViewModel time, PageBar links, HelpWindow help) {
        this.context = context;
        getStyleClass().add("top-bar");
        setMinWidth(0);
        setAlignment(Pos.CENTER_LEFT);
        Label name = new Label(context.messages().of("app.name"));
        name.getStyleClass().add("app-name");
        name.setMinWidth(USE_PREF_SIZE);
        Region left = new Region();
        Region right = new Region();
        HBox.setHgrow(left, Priority.SOMETIMES);
        HBox.setHgrow(right, Priority.SOMETIMES);
        left.setMinWidth(10);
        Label working = new Label(context.messages().of("bar.working.sentence"));
        working.getStyleClass().add("faint");
        working.setMinWidth(USE_PREF_SIZE);
        working.visibleProperty().bind(context.forecasts().workingProperty().and(working.managedProperty()));
        AsOfBar asOf = new AsOfBar(context.messages(), time, context.dark());
        undo = undo();
        redo = redo();
        getChildren().addAll(name, cellarMenu(), links, left, asOf, working, right, undo, redo, view(), help(help));
        Widths.follow(this, width -> fit(width, name, asOf, working));
        // A longer date or another name wants other room at the same width.
        needsLayoutProperty().addListener((property, before, needs) -> {
            if (!needs && fitted >= 0 && wanted() != fitted) {
                Platform.runLater(() -> fit(getWidth(), name, asOf, working));
            }
        });
    }

    /**
     * What gives way where the words of a language do not fit: that it calculates, then the slider, which goes into a
     * popover, then the program's name, which stands in the title of the window, then the words for undo and redo.
     */
    private void fit(double width, Label name, AsOfBar asOf, Label working) {
        asOf.setCompact(false);
        working.setManaged(true);
        name.setManaged(true);
        undo.setText(context.messages().of("bar.undo.button"));
        redo.setText(context.messages().of("bar.redo.button"));
        if (wanted() > width) {
            working.setManaged(false);
        }
        if (wanted() > width) {
            asOf.setCompact(true);
        }
        if (wanted() > width) {
            name.setManaged(false);
        }
        if (wanted() > width) {
            undo.setText(UNDO_SIGN);
            redo.setText(REDO_SIGN);
        }
        name.setVisible(name.isManaged());
        fitted = wanted();
    }

    /** What was just put in has no size before it has its style. */
    private double wanted() {
        applyCss();
        return prefWidth(USE_COMPUTED_SIZE);
    }

    private Node cellarMenu() {
        Workspace workspace = context.workspace();
        CellarChooser chooser = context.chooser();
        MenuButton menu = new MenuButton(workspace.getCellar().name());
        menu.setId("cellar-menu");
        menu.getStyleClass().add("quiet");
        menu.setMinWidth(110);
        menu.setMaxWidth(200);
        menu.setAccessibleText(context.messages().of("bar.cellar.menu", menu.getText()));
        workspace
                .stateProperty()
                .addListener(
                        (property, before, after) -> menu.setText(after.cellar().name()));
        menu.setOnShowing(event -> {
            Menu recent = new Menu(context.messages().of("bar.cellar.recent"));
            for (CellarChooser.Recent each : chooser.recent()) {
                MenuItem item = item(each.name() + "  " + each.folder(), () -> chooser.reopen(each));
                item.setMnemonicParsing(false);
                recent.getItems().add(item);
            }
            recent.setDisable(recent.getItems().isEmpty());
            menu.getItems()
                    .setAll(
                            item(context.messages().of("bar.cellar.new"), chooser::startPage),
                            item(context.messages().of("bar.cellar.open"), chooser::open),
                            recent,
                            item(context.messages().of("bar.cellar.demo"), chooser::demo),
                            new SeparatorMenuItem(),
                            item(
                                    context.messages().of("bar.cellar.settings"),
                                    () -> context.editors().editSettings()),
                            item(
                                    context.messages().of("bar.cellar.broker"),
                                    () -> context.editors().editBroker()));
        });
        menu.getItems().add(new MenuItem(""));
        return menu;
    }

    private MenuItem item(String words, Runnable act) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(event -> context.faults().guard(act));
        return item;
    }

    private Button undo() {
        Workspace workspace = context.workspace();
        Button button = button("undo", context.messages().of("bar.undo.button"), workspace::undo);
        Tooltip tip = new Tooltip();
        button.setTooltip(tip);
        Runnable show = () -> {
            String what = workspace.undoTextProperty().get();
            button.setDisable(what.isEmpty());
            tip.setText(
                    what.isEmpty()
                            ? context.messages().of("bar.undo.nothing")
                            : context.messages().of("bar.undo.sentence", what));
            button.setAccessibleText(tip.getText());
        };
        workspace.undoTextProperty().addListener((property, before, after) -> show.run());
        show.run();
        return button;
    }

    private Button redo() {
        Workspace workspace = context.workspace();
        Button button = button("redo", context.messages().of("bar.redo.button"), workspace::redo);
        Tooltip tip = new Tooltip();
        button.setTooltip(tip);
        Runnable show = () -> {
            String what = workspace.redoTextProperty().get();
            button.setDisable(what.isEmpty());
            tip.setText(
                    what.isEmpty()
                            ? context.messages().of("bar.redo.nothing")
                            : context.messages().of("bar.redo.sentence", what));
            button.setAccessibleText(tip.getText());
        };
        workspace.redoTextProperty().addListener((property, before, after) -> show.run());
        show.run();
        return button;
    }

    /** Units and colours, each line named for what a click does. */
    private Node view() {
        MenuItem units = item("", this::changeUnits);
        units.setId("units");
        MenuItem theme = item("", () -> context.dark().set(!context.dark().get()));
        theme.setId("theme");
        MenuButton menu = new MenuButton(context.messages().of("bar.view.menu"), null, units, theme, language());
        menu.setId("view-menu");
        menu.setMinWidth(USE_PREF_SIZE);
        menu.getStyleClass().add("quiet");
        Runnable name = () -> {
            boolean us = context.workspace().getCellar().settings().units() == UnitSystem.US;
            units.setText(context.messages().of(us ? "bar.units.to-metric" : "bar.units.to-us"));
            theme.setText(context.messages().of(context.dark().get() ? "bar.theme.to-light" : "bar.theme.to-dark"));
        };
        menu.setOnShowing(event -> name.run());
        name.run();
        return menu;
    }

    private Button help(HelpWindow help) {
        Button button = button("help-button", context.messages().of("help.button"), () -> help.show(getScene()));
        button.getStyleClass().add("help-button");
        button.setAccessibleText(context.messages().of("help.button-sentence"));
        button.setTooltip(new Tooltip(button.getAccessibleText()));
        return button;
    }

    private Menu language() {
        Menu language = new Menu(context.messages().of("bar.language.menu"));
        language.getItems().setAll(LanguageMenu.items(context.messages(), context.chooser()));
        return language;
    }

    private void changeUnits() {
        context.workspace().changeThroughout(cellar -> {
            Settings settings = cellar.settings();
            return cellar.withSettings(settings.withUnits(other(settings.units())));
        });
    }

    private static UnitSystem other(UnitSystem units) {
        return units == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
    }

    private Button button(String id, String words, Runnable act) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> context.faults().guard(act));
        return button;
    }
}
