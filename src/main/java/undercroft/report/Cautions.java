package undercroft.report;

import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;

/** What to heed with bottles that are, or may come, near what they are trusted with. */
final class Cautions {
    private static final List<String> ACT = List.of(
            "Eyes first: eye or face protection, gloves and long sleeves before you go near.",
            "Cool the whole closed box before you touch a bottle; every 10 °C (18 °F) takes about a bar (15 psi) off.",
            "No knocks, no shaking, no warming; a short drop can be enough.",
            "Keep it away from faces, from children and from where people pass.");
    private static final List<String> WATCH = List.of(
            "Keep it cool and in a closed box, away from faces and children.",
            "Cool it before you handle it, without knocks; wear eye protection, gloves and long sleeves.");
    private static final String WORD_OF_OTHERS =
            "Local codes and the word of the bottle's maker win over this page: these are estimates and no permission.";

    private Cautions() {}

    static void write(Markup page, BatchOutlook batch) {
        Alert alert = batch.verdict().alert(Cause.Topic.PRESSURE);
        if (alert == Alert.CLEAR) {
            return;
        }
        page.open("div", "class", "caution " + AlertMark.cssName(alert), "role", "note");
        page.element(
                "h4",
                alert == Alert.ACT
                        ? "Before anybody touches these bottles"
                        : "These bottles come near what they are trusted with");
        page.open("ul");
        (alert == Alert.ACT ? ACT : WATCH).forEach(sentence -> page.element("li", sentence));
        page.element("li", WORD_OF_OTHERS).close("ul").close("div");
    }
}
