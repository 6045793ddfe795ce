package undercroft.view.kit;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Text;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.mark.TextStyle;

/** Measures texts in the fonts the canvas writes with; remembers what it measured. For the window's thread. */
public final class FontMeasure implements TextMeasure {
    private static final int MOST_REMEMBERED = 2_000;
    private final Text probe = new Text();
    private final Map<String, Double> remembered = new HashMap<>();

    @Override
    public double width(String text, TextStyle style) {
        if (remembered.size() > MOST_REMEMBERED) {
            remembered.clear();
        }
        return remembered.computeIfAbsent(style.name() + text, key -> {
            probe.setFont(Looks.font(style));
            probe.setText(text);
            return probe.getLayoutBounds().getWidth();
        });
    }
}
