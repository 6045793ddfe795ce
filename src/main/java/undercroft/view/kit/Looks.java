package undercroft.view.kit;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import javafx.application.Application;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.text.Font;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.TextStyle;

/** Typeface, base theme and style sheet. */
public final class Looks {
    static final String FAMILY = "Inter";
    /** The toolkit knows the 600 weight as a family of its own. */
    static final String STRONG_FAMILY = "Inter Semi Bold";

    private static final List<String> FONTS = List.of("Inter-Regular.otf", "Inter-SemiBold.otf", "Inter-Bold.otf");
    private static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");
    private static final String SHEET =
            Objects.requireNonNull(Looks.class.getResource("undercroft.css")).toExternalForm();

    private static final Map<TextStyle, Font> WRITING = new ConcurrentHashMap<>();

    private Looks() {}

    /** Makes the typeface known; once, before the first window. */
    public static void loadFonts() {
        for (String font : FONTS) {
            try (InputStream file = Looks.class.getResourceAsStream("/undercroft/assets/fonts/" + font)) {
                Font.loadFont(file, 13);
            } catch (IOException fault) {
                throw new UncheckedIOException(fault);
            }
        }
        WRITING.clear();
    }

    /** The program's sign in the sizes that windows and task switchers ask for. */
    public static List<Image> icons() {
        return Stream.of(32, 64, 128)
                .map(size -> new Image(Looks.class
                        .getResource("/undercroft/assets/icons/undercroft-" + size + ".png")
                        .toExternalForm()))
                .toList();
    }

    /** The font of a sort of writing in a picture. To look one up takes longer than to write a word in it, so it is kept. */
    static Font font(TextStyle style) {
        return WRITING.computeIfAbsent(
                style, each -> Font.font(each.isStrong() ? STRONG_FAMILY : FAMILY, each.sizePixels()));
    }

    /** Dresses a scene, a dialog's too, in light or dark. */
    public static void dress(Scene scene, boolean dark) {
        String theme = dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet();
        if (!theme.equals(Application.getUserAgentStylesheet())) {
            Application.setUserAgentStylesheet(theme);
        }
        if (!scene.getStylesheets().contains(SHEET)) {
            scene.getStylesheets().add(SHEET);
        }
        mark(scene.getRoot(), dark);
    }

    /** Tells a root, such as that of a popover, which colours hold. */
    static void mark(Node root, boolean dark) {
        if (!root.getStyleClass().contains("undercroft")) {
            root.getStyleClass().add("undercroft");
        }
        root.pseudoClassStateChanged(DARK, dark);
    }

    public static Palette palette(boolean dark) {
        return dark ? Palette.DARK : Palette.LIGHT;
    }
}
