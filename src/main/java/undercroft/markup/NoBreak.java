package undercroft.markup;

import java.util.regex.Pattern;

/** Where a line may end: not between a number and its unit. */
public final class NoBreak {
    private static final Pattern BEFORE_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:°[CF]|bar|psi|vol|mL|min|[%Lgh])(?![\\p{L}\\d]))");

    /** A hyphen between a word and a capital, as in {@code 500-mL-Bügelflasche}. */
    private static final Pattern BEFORE_CAPITAL = Pattern.compile("(?<=\\p{L})-(?=\\p{Lu})");

    private NoBreak() {}

    /** The text with a no-break space before each unit. */
    public static String units(String text) {
        return BEFORE_UNIT.matcher(text).replaceAll("\u00A0");
    }

    /** The same for a narrow column, in which a compound may end a line at its hyphens. */
    public static String narrow(String text) {
        return BEFORE_CAPITAL.matcher(units(text)).replaceAll("-\u200B");
    }
}
