package undercroft.view.kit.form;

import java.util.List;
import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.form.BooleanField;
import undercroft.app.form.Field;
import undercroft.app.form.NumberField;

/** Labels on the left, fields on the right, what is wrong or worth knowing under each field. */
public final class FormGrid extends GridPane {
    /** The sheet that dresses forms; their root is of class {@code form}. */
    public static final String SHEET =
            Objects.requireNonNull(FormGrid.class.getResource("forms.css")).toExternalForm();

    private static final double LABEL_WIDTH = 168;
    private static final double FIELD_WIDTH = 320;
    private static final double LEAST_FIELD_WIDTH = 220;
    private static final double SHORT_NUMBER_WIDTH = 72;

    private final boolean stacked;
    private int row;

    public FormGrid() {
        this(false);
    }

    /** For a narrow column: each label stands above its field. */
    public static FormGrid stacked() {
        return new FormGrid(true);
    }

    private FormGrid(boolean stacked) {
        this.stacked = stacked;
        getStyleClass().add("form-grid");
        if (stacked) {
            ColumnConstraints all = new ColumnConstraints(0, FIELD_WIDTH, Double.MAX_VALUE);
            all.setHgrow(Priority.ALWAYS);
            getColumnConstraints().add(all);
            return;
        }
        ColumnConstraints labels = new ColumnConstraints(LABEL_WIDTH, LABEL_WIDTH, LABEL_WIDTH);
        labels.setHalignment(HPos.LEFT);
        ColumnConstraints fields = new ColumnConstraints(LEAST_FIELD_WIDTH, FIELD_WIDTH, Double.MAX_VALUE);
        fields.setHgrow(Priority.ALWAYS);
        getColumnConstraints().addAll(labels, fields);
    }

    /** A line above the fields that follow. */
    public FormGrid section(String title) {
        Label label = new Label(title);
        label.getStyleClass().add("form-section");
        add(label, 0, row++, 2, 1);
        return this;
    }

    public FormGrid field(Field<?> field) {
        Node node = FieldControls.of(field);
        return labelled(field instanceof BooleanField ? "" : field.label(), node, field, List.of(field));
    }

    public FormGrid fields(List<? extends Field<?>> several) {
        several.forEach(this::field);
        return this;
    }

    /** Several short fields in one line; what is wrong with any stands under the line. */
    public FormGrid line(String words, Field<?>... fields) {
        HBox line = new HBox();
        line.getStyleClass().add("form-line");
        for (Field<?> field : fields) {
            Node node = FieldControls.of(field);
            if (field instanceof NumberField) {
                ((Region) node).setMinWidth(SHORT_NUMBER_WIDTH);
                ((Region) node).setPrefWidth(SHORT_NUMBER_WIDTH);
            } else {
                HBox.setHgrow(node, Priority.ALWAYS);
            }
            line.getChildren().add(node);
        }
        return labelled(words, line, fields[0], List.of(fields));
    }

    private FormGrid labelled(String words, Node node, Field<?> asked, List<? extends Field<?>> notes) {
        VBox below = new VBox(node);
        below.getStyleClass().add("form-field");
        notes.forEach(each -> below.getChildren().addAll(fault(each.faultProperty()), hint(each)));
        if (!words.isEmpty()) {
            Label label = new Label(words);
            label.getStyleClass().add("form-label");
            label.setWrapText(true);
            label.setLabelFor(node);
            GridPane.setValignment(label, VPos.TOP);
            show(label, asked);
            add(label, 0, stacked ? row++ : row);
        }
        show(below, asked);
        add(below, stacked ? 0 : 1, row++);
        return this;
    }

    /** Something over the whole width. */
    public FormGrid wide(Node node) {
        add(node, 0, row++, 2, 1);
        return this;
    }

    private static void show(Node node, Field<?> field) {
        node.visibleProperty().bind(field.askedProperty());
        node.managedProperty().bind(field.askedProperty());
    }

    /** A fault in words, with room only while there is one. */
    public static Label fault(ReadOnlyStringProperty sentence) {
        Label label = new Label();
        label.getStyleClass().add("form-fault");
        label.textProperty().bind(sentence);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.visibleProperty().bind(sentence.isNotEmpty());
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }

    private static Label hint(Field<?> field) {
        Label label = new Label();
        label.getStyleClass().addAll("faint", "form-hint");
        label.textProperty().bind(field.hintProperty());
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.visibleProperty()
                .bind(Bindings.and(
                        field.hintProperty().isNotEmpty(), field.faultProperty().isEmpty()));
        label.managedProperty().bind(label.visibleProperty());
        return label;
    }
}
