package undercroft.view;

import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;
import undercroft.app.TimeViewModel;
import undercroft.view.kit.Popovers;
import undercroft.wording.Messages;

/** Slides the whole shelf through time, a day a step; in a narrow window the date is a button that opens the slider. */
final class AsOfBar extends HBox {
    private final Messages messages;

    private static final int WEEK = 7;

    private final TimeViewModel time;
    private final ObservableBooleanValue dark;
    private final Slider slider;
    private boolean compact;

    AsOfBar(Messages messages, TimeViewModel time, ObservableBooleanValue dark) {
        super(8);
        this.messages = messages;
        this.time = time;
        this.dark = dark;
        getStyleClass().add("as-of");
        setAlignment(Pos.CENTER_LEFT);
        slider = slider();
        fill();
    }

    void setCompact(boolean isCompact) {
        if (compact != isCompact) {
            compact = isCompact;
            fill();
        }
    }

    private void fill() {
        HBox.setHgrow(this, compact ? Priority.NEVER : Priority.ALWAYS);
        if (compact) {
            Button date = new Button();
            date.setId("as-of-open");
            date.getStyleClass().add("quiet");
            date.setMinWidth(USE_PREF_SIZE);
            date.textProperty().bind(time.labelProperty());
            date.setAccessibleText(messages.of("time.slider.sentence"));
            date.setOnAction(event -> Popovers.show(
                    date,
                    new VBox(8, sentence(), new HBox(8, slider, today())),
                    PopOver.ArrowLocation.TOP_CENTER,
                    dark.get()));
            getChildren().setAll(date);
        } else {
            Label name = new Label(messages.of("time.slider.label"));
            name.getStyleClass().add("faint");
            name.setMinWidth(USE_PREF_SIZE);
            name.setLabelFor(slider);
            Label date = new Label();
            date.setId("as-of-label");
            date.getStyleClass().add("as-of-date");
            date.textProperty().bind(time.labelProperty());
            date.setMinWidth(165);
            getChildren().setAll(name, slider, today(), date);
        }
    }

    private Node sentence() {
        Label words = new Label(messages.of("time.slider.sentence"));
        words.getStyleClass().add("faint");
        return words;
    }

    private Slider slider() {
        Slider made = new Slider();
        made.setId("as-of");
        made.setAccessibleText(messages.of("time.slider.sentence"));
        made.minProperty().bind(time.firstDayProperty());
        made.maxProperty().bind(time.lastDayProperty());
        made.setBlockIncrement(1);
        made.setMajorTickUnit(WEEK);
        made.setMinorTickCount(WEEK - 1);
        made.setSnapToTicks(false);
        made.setPrefWidth(180);
        made.setMinWidth(110);
        made.setMaxWidth(360);
        HBox.setHgrow(made, Priority.ALWAYS);
        made.setValue(time.dayProperty().get());
        made.valueProperty()
                .addListener(
                        (property, before, after) -> time.dayProperty().set((int) Math.round(after.doubleValue())));
        time.dayProperty().addListener((property, before, after) -> {
            if (Math.round(made.getValue()) != after.intValue()) {
                made.setValue(after.intValue());
            }
        });
        return made;
    }

    private Button today() {
        Button today = new Button(messages.of("time.today.button"));
        today.setId("today");
        today.setMinWidth(USE_PREF_SIZE);
        today.getStyleClass().add("quiet");
        today.setOnAction(event -> time.goToToday());
        today.disableProperty().bind(time.dayProperty().isEqualTo(0));
        return today;
    }
}
