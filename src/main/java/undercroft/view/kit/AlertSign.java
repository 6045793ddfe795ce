package undercroft.view.kit;

import java.util.Locale;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Shape;
import undercroft.outlook.lot.Alert;
import undercroft.wording.AlertWords;
import undercroft.wording.Messages;

/** The sign of an alert: open circle, open triangle, filled diamond. */
public final class AlertSign extends StackPane {
    private static final double SIZE = 16;

    public AlertSign(Alert alert) {
        Shape sign = shape(alert);
        sign.getStyleClass().add("alert-sign");
        getStyleClass().add(styleClass(alert));
        getChildren().add(sign);
        setMinSize(SIZE, SIZE);
        setPrefSize(SIZE, SIZE);
        setMaxSize(SIZE, SIZE);
        setMouseTransparent(true);
    }

    public static String styleClass(Alert alert) {
        return "alert-" + alert.name().toLowerCase(Locale.ROOT);
    }

    private static Shape shape(Alert alert) {
        return switch (alert) {
            case CLEAR -> new Circle(4.6);
            case WATCH -> new Polygon(0, -5, 5.6, 4.6, -5.6, 4.6);
            case ACT -> new Polygon(0, -6.4, 6.4, 0, 0, 6.4, -6.4, 0);
        };
    }

    /** The sign with its word; nothing where nothing is to be seen to. */
    public static Region withWord(Messages messages, Alert alert) {
        if (alert == Alert.CLEAR) {
            return new Region();
        }
        Label word = new Label(new AlertWords(messages).word(alert), new AlertSign(alert));
        word.getStyleClass().addAll("alert-word", styleClass(alert));
        word.setMinWidth(USE_PREF_SIZE);
        return word;
    }
}
