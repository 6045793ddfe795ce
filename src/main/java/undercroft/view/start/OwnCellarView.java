package undercroft.view.start;

import java.nio.file.Path;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.form.Field;
import undercroft.app.form.NumberField;
import undercroft.app.start.FirstCellarForm;
import undercroft.quantity.UnitSystem;
import undercroft.view.kit.CellarChooser;
import undercroft.view.kit.form.FieldControls;
import undercroft.view.kit.form.FormGrid;
import undercroft.wording.Messages;

/** The likely way to begin: a name, a place, done. */
final class OwnCellarView extends VBox {
    private final Messages messages;
    private static final double NUMBER_WIDTH = 72;
    private static final double NAME_WIDTH = 340;

    private final CellarChooser chooser;
    private final Label folder = new Label();
    private final VBox asked = new VBox(14);
    private final PreviewView preview;
    private Path parent;
    private FirstCellarForm form;

    OwnCellarView(Messages messages, FirstCellarForm form, Path documents, CellarChooser chooser) {
        this.messages = messages;
        preview = new PreviewView(messages);
        this.chooser = chooser;
        this.parent = documents;
        this.form = form;
        getStyleClass().addAll("start-card", "start-own");
        Label title = new Label(messages.of("start.own.title"));
        title.getStyleClass().add("start-title");
        title.setMinWidth(USE_PREF_SIZE);
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        Label time = new Label(messages.of("start.own.time"));
        time.getStyleClass().add("faint");
        HBox head = new HBox(8, title, between, time);
        head.setAlignment(Pos.BASELINE_LEFT);
        preview.managedProperty().bind(preview.visibleProperty());
        getChildren().addAll(head, asked, preview, foot());
        ask();
    }

    /** Whether there is room to show what the answers make. */
    void setRoomy(boolean roomy) {
        preview.setVisible(roomy);
    }

    /** Puts the keyboard on the name. */
    void takeFocus() {
        asked.lookup("#start-name").requestFocus();
    }

    private void ask() {
        TextField name = (TextField) FieldControls.of(form.name());
        name.setPromptText(messages.of("start.name.prompt"));
        name.setMaxWidth(NAME_WIDTH);
        TextField other = (TextField) FieldControls.of(form.placeName());
        other.setMaxWidth(NAME_WIDTH);
        VBox place = group(messages.of("start.spot.label"), "", new ChipsView<>(form.spot()));
        VBox named = group(form.placeName().label(), "", other, fault(form.placeName()));
        named.visibleProperty().bind(form.placeName().askedProperty());
        named.managedProperty().bind(named.visibleProperty());
        FlowPane warmth = new FlowPane(20, 8);
        VBox faults = new VBox();
        for (NumberField each : form.temperatures()) {
            TextField field = (TextField) FieldControls.of(each);
            field.setPrefWidth(NUMBER_WIDTH);
            Label label = new Label(each.label());
            label.setLabelFor(field);
            HBox pair = new HBox(8, label, field);
            pair.setAlignment(Pos.CENTER_LEFT);
            warmth.getChildren().add(pair);
            faults.getChildren().add(fault(each));
        }
        asked.getChildren()
                .setAll(
                        group(form.name().label(), "", name, fault(form.name())),
                        place,
                        named,
                        group(messages.of("start.warmth.title"), messages.of("start.warmth.hint"), warmth, faults),
                        group(form.light().label(), "", new ChipsView<>(form.light())),
                        FormGrid.fault(form.faultProperty()));
        Stream.<Observable>of(
                        form.name().textProperty(),
                        form.placeName().textProperty(),
                        form.spot().chosenProperty(),
                        form.temperatures().get(0).textProperty(),
                        form.temperatures().get(1).textProperty(),
                        form.temperatures().get(2).textProperty())
                .forEach(each -> each.addListener((InvalidationListener) changed -> show()));
        show();
    }

    private static Node fault(Field<?> field) {
        return FormGrid.fault(field.faultProperty());
    }

    private static VBox group(String title, String hint, Node... parts) {
        Label label = new Label(title);
        label.getStyleClass().add("start-strong");
        Label more = new Label(hint);
        more.getStyleClass().add("faint");
        VBox group = new VBox(6, new HBox(12, label, more));
        group.getChildren().addAll(parts);
        return group;
    }

    private Node foot() {
        Button button = new Button(messages.of("start.create.button"));
        button.setId("start-create");
        button.getStyleClass().add("accent");
        button.setDefaultButton(true);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> confirm());
        folder.getStyleClass().add("faint");
        folder.setId("start-folder");
        folder.setWrapText(true);
        Button change = new Button(messages.of("start.create.change"));
        change.setId("start-change");
        change.getStyleClass().addAll("quiet", "small");
        change.setMinWidth(USE_PREF_SIZE);
        change.setOnAction(event -> chooseParent());
        HBox foot = new HBox(12, button, folder, change);
        foot.setAlignment(Pos.CENTER_LEFT);
        return foot;
    }

    private void chooseParent() {
        chooser.askFolder(messages.of("start.create.choose"), parent).ifPresent(chosen -> {
            parent = chosen;
            show();
        });
    }

    private void show() {
        folder.setText(messages.of("start.create.folder", form.folderIn(parent)));
        preview.show(form);
    }

    private void confirm() {
        form.showFaults().ifPresent(faulty -> asked.lookup("#" + faulty.id()).requestFocus());
        if (form.canSave()) {
            chooser.create(form.made(), form.folderIn(parent));
        }
    }

    /** The two unit systems, the one in use marked. */
    Node units() {
        ToggleGroup group = new ToggleGroup();
        HBox both = new HBox();
        both.getStyleClass().add("start-units");
        for (UnitSystem system : UnitSystem.values()) {
            ToggleButton button =
                    new ToggleButton(messages.of(system == UnitSystem.US ? "start.units.us" : "start.units.metric"));
            button.setId(system == UnitSystem.US ? "start-us" : "start-metric");
            button.setToggleGroup(group);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setSelected(system == form.unitSystem());
            button.setOnAction(event -> {
                button.setSelected(true);
                form = form.in(system);
                ask();
            });
            both.getChildren().add(button);
        }
        return both;
    }
}
