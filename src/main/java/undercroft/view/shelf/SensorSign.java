package undercroft.view.shelf;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import undercroft.app.shelf.SensorWords;
import undercroft.view.kit.WindowContext;

/** A few words beside a place's name on its live sensor; all there is to say under the pointer. Not there without a sensor. */
final class SensorSign {
    private static final List<String> WATCH = List.of("alert-word", "alert-watch");

    private SensorSign() {}

    static Label of(WindowContext context, String placeId) {
        ObjectBinding<Optional<SensorWords>> words = Bindings.createObjectBinding(
                () -> SensorWords.of(
                        context.sensors().getValue(), context.workspace().getCellar(), placeId, context.messages()),
                context.sensors());
        Label sign = new Label();
        sign.setId("sensor-" + placeId);
        sign.getStyleClass().add("place-climate");
        sign.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> words.get().map(SensorWords::sign).orElse(""), words));
        sign.visibleProperty().bind(sign.textProperty().isNotEmpty());
        sign.managedProperty().bind(sign.visibleProperty());
        Tooltip all = new Tooltip();
        all.setWrapText(true);
        all.setMaxWidth(420);
        all.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> words.get()
                                .map(found -> String.join("\n", found.sentences()))
                                .orElse(""),
                        words));
        sign.setTooltip(all);
        words.addListener((property, before, now) -> mark(sign, now));
        mark(sign, words.get());
        return sign;
    }

    private static void mark(Label sign, Optional<SensorWords> words) {
        sign.getStyleClass().removeAll(WATCH);
        if (words.filter(SensorWords::wantsLooking).isPresent()) {
            sign.getStyleClass().addAll(WATCH);
        }
    }
}
