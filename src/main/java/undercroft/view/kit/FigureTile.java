package undercroft.view.kit;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import org.controlsfx.control.PopOver;
import undercroft.app.shelf.BatchPage;
import undercroft.markup.NoBreak;
import undercroft.outlook.lot.Alert;
import undercroft.wording.Messages;

/** A key figure; a press tells where it comes from. */
public final class FigureTile extends Button {
    private static final int LONG_VALUE = 13;
    private static final double WIDTH = 132;
    private static final double PADDING = 18;

    public FigureTile(Messages messages, BatchPage.Figure figure, boolean dark) {
        Label name = new Label(figure.label());
        name.getStyleClass().add("figure-name");
        Label value = new Label(figure.value());
        value.getStyleClass().add("figure-value");
        if (figure.value().length() > LONG_VALUE) {
            value.getStyleClass().add("long");
        }
        value.setId("figure-" + figure.id() + "-value");
        HBox row = new HBox(6, name);
        row.setAlignment(Pos.CENTER_LEFT);
        if (figure.alert() != Alert.CLEAR) {
            row.getChildren().add(new AlertSign(figure.alert()));
        }
        Text detail = new Text(NoBreak.narrow(figure.detail()));
        detail.getStyleClass().add("figure-detail");
        widthProperty()
                .addListener((property, before, after) -> detail.setWrappingWidth(after.doubleValue() - PADDING));
        VBox content = new VBox(1, row, value, detail);
        content.setFillWidth(true);
        setGraphic(content);
        getStyleClass().add("figure");
        setId("figure-" + figure.id());
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(90);
        setPrefWidth(WIDTH);
        setMaxHeight(Double.MAX_VALUE);
        setAccessibleText(messages.of("batch.figure.sentence", figure.label(), figure.value(), figure.detail()));
        setTooltip(new Tooltip(getAccessibleText()));
        setOnAction(
                event -> Popovers.show(this, new WhyView(messages, figure), PopOver.ArrowLocation.TOP_CENTER, dark));
    }
}
