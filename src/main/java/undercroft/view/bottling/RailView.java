package undercroft.view.bottling;

import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.bottling.BottlingPage;
import undercroft.app.bottling.DayList;
import undercroft.app.bottling.PlanForm;
import undercroft.app.bottling.Rail;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;

/** The pages of a plan by name, each with how far it is. */
final class RailView extends VBox {
    private static final double WIDTH = 232;

    private final BottlingContext context;
    private final PlanForm form;
    private final Map<BottlingPage, ToggleButton> links = new EnumMap<>(BottlingPage.class);
    private final Label name = Labels.of("", "rail-name");
    private final Label timer = Labels.of("", "rail-timer");

    RailView(BottlingContext context, PlanForm form) {
        super(2);
        this.context = context;
        this.form = form;
        getStyleClass().add("rail");
        setMinWidth(WIDTH);
        setPrefWidth(WIDTH);
        Button all = new Button(context.messages().of("bottling.plans.all"));
        all.setId("drafts-all");
        all.getStyleClass().add("quiet");
        all.setOnAction(event -> context.window().faults().guard(context.model()::close));
        getChildren().addAll(all, name);
        ToggleGroup group = new ToggleGroup();
        for (BottlingPage screen : BottlingPage.values()) {
            ToggleButton link = link(screen);
            link.setToggleGroup(group);
            links.put(screen, link);
            getChildren().add(link);
        }
        timer.setId("rail-timer");
        timer.managedProperty().bind(timer.visibleProperty());
        getChildren().add(timer);
        form.madeProperty().addListener((property, before, after) -> write());
        form.dayProperty().addListener((property, before, after) -> write());
        write();
    }

    private ToggleButton link(BottlingPage screen) {
        ToggleButton link = new ToggleButton();
        link.setId("screen-" + screen.id());
        link.getStyleClass().add("rail-link");
        link.setMaxWidth(Double.MAX_VALUE);
        link.setAlignment(Pos.CENTER_LEFT);
        link.setOnAction(event -> {
            link.setSelected(true);
            context.window().faults().guard(() -> context.model().show(screen));
        });
        link.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                link.fire();
                event.consume();
            }
        });
        return link;
    }

    void write() {
        name.setText(form.madeProperty().get().name());
        Rail rail = new Rail(form, context.model().words());
        links.forEach((screen, link) -> {
            Rail.State state = rail.state(screen);
            Label number = new Label(String.valueOf(screen.number()));
            number.getStyleClass().add("rail-number");
            Label title = new Label(screen.title(context.messages()));
            title.getStyleClass().add("rail-title");
            Label words = new Label(state.words());
            words.getStyleClass().add("faint");
            VBox text = new VBox(title, words);
            HBox.setHgrow(text, Priority.ALWAYS);
            HBox row = new HBox(10, number, text);
            row.setAlignment(Pos.CENTER_LEFT);
            if (state.alert() != Alert.CLEAR) {
                row.getChildren().add(new AlertSign(state.alert()));
            }
            link.setGraphic(row);
            link.setAccessibleText(
                    context.messages().of("words.list.joint", screen.title(context.messages()), state.words()));
            link.setSelected(screen == context.model().screenProperty().get());
        });
        second();
    }

    /** Says which timer has run out, if one has. */
    void second() {
        String words = context.model()
                .dayList()
                .flatMap(DayList::waiting)
                .map(step -> context.messages()
                        .of("bottling.timer.over-rail", context.model().words().of(step.words())))
                .orElse("");
        timer.setText(words);
        timer.setVisible(!words.isEmpty());
    }
}
