package undercroft.view.start;

import java.nio.file.Path;
import java.time.ZoneId;
import javafx.beans.property.BooleanProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.start.FirstCellarForm;
import undercroft.quantity.UnitSystem;
import undercroft.view.kit.CellarChooser;
import undercroft.wording.Messages;

/** Three ways to begin: a cellar of one's own, the demo, a folder. */
public final class StartView extends ScrollPane {
    private final Messages messages;
    private static final double ONE_COLUMN = 1000;
    private static final double ROOMY = 700;
    private static final double OWN_SHARE = 66;

    private final OwnCellarView own;
    private final OtherWaysView others;
    private final GridPane ways = new GridPane();

    /**
     * The page.
     *
     * @param zone whose clock the new cellar follows
     * @param documents the folder in which people keep what is theirs
     * @param dark whether colours are dark; the page changes it
     * @param help opens the help
     */
    public StartView(
            Messages messages,
            CellarChooser chooser,
            ZoneId zone,
            Path documents,
            BooleanProperty dark,
            Runnable help) {
        this.messages = messages;
        own = new OwnCellarView(messages, new FirstCellarForm(messages, zone, UnitSystem.METRIC), documents, chooser);
        others = new OtherWaysView(messages, chooser, dark.get());
        setId("start");
        getStyleClass().add("start");
        ways.setHgap(20);
        ways.setVgap(20);
        VBox page = new VBox(20, head(messages, chooser), ways, foot(chooser, dark, help));
        page.getStyleClass().add("start-page");
        setContent(page);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        widthProperty().addListener((property, before, after) -> arrange());
        heightProperty().addListener((property, before, after) -> arrange());
        arrange();
    }

    /** Puts the keyboard where typing begins. */
    public void takeFocus() {
        own.takeFocus();
    }

    private static Node head(Messages messages, CellarChooser chooser) {
        Label name = new Label(messages.of("app.name"));
        name.getStyleClass().add("start-name");
        Label words = new Label(messages.of("start.title"));
        words.setWrapText(true);
        words.setMinHeight(USE_PREF_SIZE);
        VBox both = new VBox(2, name, words);
        HBox.setHgrow(both, Priority.ALWAYS);
        HBox head = new HBox(12, both);
        chooser.back().ifPresent(back -> {
            Button button = new Button(messages.of("start.back.button"));
            button.setId("start-back");
            button.getStyleClass().add("quiet");
            button.setCancelButton(true);
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> back.run());
            head.getChildren().add(button);
        });
        return head;
    }

    private Node foot(CellarChooser chooser, BooleanProperty dark, Runnable help) {
        Label units = new Label(messages.of("start.units.label"));
        Button theme = new Button();
        theme.setId("theme");
        theme.getStyleClass().add("quiet");
        theme.setMinWidth(USE_PREF_SIZE);
        theme.setOnAction(event -> dark.set(!dark.get()));
        Runnable name = () -> theme.setText(messages.of(dark.get() ? "bar.theme.to-light" : "bar.theme.to-dark"));
        dark.addListener((property, before, after) -> name.run());
        name.run();
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        Label caution = new Label(messages.of("caution.estimate"));
        caution.getStyleClass().add("faint");
        caution.setWrapText(true);
        caution.setMinHeight(USE_PREF_SIZE);
        MenuButton language = new MenuButton(messages.of("bar.language.menu"));
        language.getItems().setAll(LanguageMenu.items(messages, chooser));
        language.setId("language");
        language.getStyleClass().add("quiet");
        language.setMinWidth(USE_PREF_SIZE);
        Button open = new Button(messages.of("help.title"));
        open.setId("help-button");
        open.getStyleClass().add("quiet");
        open.setMinWidth(USE_PREF_SIZE);
        open.setOnAction(event -> help.run());
        HBox foot = new HBox(10, units, own.units(), theme, language, open, between, caution);
        foot.setAlignment(Pos.CENTER_LEFT);
        units.setMinWidth(USE_PREF_SIZE);
        return foot;
    }

    /** Beside each other where there is room, below each other where there is not; the preview goes before anything else. */
    private void arrange() {
        boolean one = getWidth() > 0 && getWidth() < ONE_COLUMN;
        own.setRoomy(getHeight() == 0 || getHeight() >= ROOMY);
        ways.getColumnConstraints().clear();
        ways.getChildren().clear();
        if (one) {
            ways.getColumnConstraints().add(column(100));
            ways.add(own, 0, 0);
            ways.add(others, 0, 1);
        } else {
            ways.getColumnConstraints().addAll(column(OWN_SHARE), column(100 - OWN_SHARE));
            ways.add(own, 0, 0);
            ways.add(others, 1, 0);
        }
    }

    private static ColumnConstraints column(double percent) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(percent);
        column.setHgrow(Priority.ALWAYS);
        column.setMinWidth(0);
        return column;
    }
}
