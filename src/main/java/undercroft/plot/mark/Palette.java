package undercroft.plot.mark;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * The colours of every role on one ground. Data colours stem from the set of M. Okabe and K. Ito, "Color Universal
 * Design" (2008), darkened or lightened where a line would stand out too little from its ground. A role has a second,
 * stronger colour for words.
 */
public final class Palette {
    public static final Palette LIGHT = new Palette()
            .with(Role.PAPER, "#FFFFFF")
            .with(Role.INK, "#1F2A30")
            .with(Role.FAINT_INK, "#5A646A")
            .with(Role.GRID, "#ECE9E2")
            .with(Role.FRAME, "#CBC6BB")
            .with(Role.CARBONATION, "#0072B2", "#005F96")
            .with(Role.PRESSURE, "#A84C82", "#93396F")
            .with(Role.TEMPERATURE, "#2B3438")
            .with(Role.ROOM, "#2E8BC0", "#1B658F")
            .with(Role.LIGHT, "#A89200", "#665900")
            .with(Role.AGE, "#8A6D3B", "#6E5427")
            .with(Role.READY, "#009E73", "#006B4E")
            .with(Role.SPELL, "#E69F00", "#7A5200")
            .with(Role.GAP, "#8C8A84", "#5A5F60")
            .with(Role.LIMIT, "#BD4300", "#A33A00")
            .with(Role.NOW, "#1F2A30");

    public static final Palette DARK = new Palette()
            .with(Role.PAPER, "#1F2428")
            .with(Role.INK, "#ECEAE4")
            .with(Role.FAINT_INK, "#A4ACB1")
            .with(Role.GRID, "#2D3439")
            .with(Role.FRAME, "#475057")
            .with(Role.CARBONATION, "#56B4E9", "#7CC5EF")
            .with(Role.PRESSURE, "#D889B4", "#E2A0C4")
            .with(Role.TEMPERATURE, "#DAD8D2")
            .with(Role.ROOM, "#4E9CC9", "#8CC3E4")
            .with(Role.LIGHT, "#F0E442", "#F0E66A")
            .with(Role.AGE, "#C9A86A", "#D9BD88")
            .with(Role.READY, "#2DB78C", "#55CBA5")
            .with(Role.SPELL, "#E69F00", "#F0B840")
            .with(Role.GAP, "#7D868C", "#A9B0B5")
            .with(Role.LIMIT, "#EE7B30", "#F59A5E")
            .with(Role.NOW, "#ECEAE4");

    public static final Palette PRINT = new Palette()
            .with(Role.PAPER, "#FFFFFF")
            .with(Role.INK, "#000000")
            .with(Role.FAINT_INK, "#404040")
            .with(Role.GRID, "#E4E4E4")
            .with(Role.FRAME, "#A0A0A0")
            .with(Role.CARBONATION, "#005F96", "#004B78")
            .with(Role.PRESSURE, "#8C2F68", "#752455")
            .with(Role.TEMPERATURE, "#000000")
            .with(Role.ROOM, "#2277A8", "#155478")
            .with(Role.LIGHT, "#978400", "#584D00")
            .with(Role.AGE, "#6E5427", "#57411C")
            .with(Role.READY, "#007F5C", "#005A41")
            .with(Role.SPELL, "#C98700", "#664400")
            .with(Role.GAP, "#808080", "#404040")
            .with(Role.LIMIT, "#9C3800", "#8A3200")
            .with(Role.NOW, "#000000");

    private final Map<Role, String> marks = new EnumMap<>(Role.class);
    private final Map<Role, String> words = new EnumMap<>(Role.class);

    private Palette() {}

    private Palette with(Role role, String both) {
        return with(role, both, both);
    }

    private Palette with(Role role, String mark, String word) {
        marks.put(role, mark);
        words.put(role, word);
        return this;
    }

    /** Colour of lines and fills as {@code #RRGGBB}. */
    public String hex(Role role) {
        return marks.get(role);
    }

    /** Colour of words as {@code #RRGGBB}: at least 4.5 to 1 against the paper. */
    public String textHex(Role role) {
        return words.get(role);
    }

    /** Style sheet for drawings made with {@code SvgPen}: light, dark where the reader prefers it, and print. */
    public static String css() {
        return ".plot{max-width:100%;height:auto}.plot text{font-family:Inter,system-ui,sans-serif;"
                + "font-variant-numeric:tabular-nums}\n"
                + LIGHT.rules()
                + "@media (prefers-color-scheme:dark){\n" + DARK.rules() + "}\n"
                + "@media print{\n" + PRINT.rules() + "}\n";
    }

    /** The rules for this palette alone, one class for the marks and one for the words of each role. */
    public String rules() {
        StringBuilder rules = new StringBuilder();
        for (Role role : Role.values()) {
            rules.append(String.format(
                    Locale.ROOT,
                    ".plot .r-%s{color:%s}.plot .t-%s{color:%s}\n",
                    role.cssName(),
                    hex(role),
                    role.cssName(),
                    textHex(role)));
        }
        rules.append(".plot .halo{stroke:").append(hex(Role.PAPER)).append("}\n");
        return rules.toString();
    }
}
