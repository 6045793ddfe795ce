package undercroft.wording;

import undercroft.outlook.lot.Alert;

/** An alert in a word. Where nothing is to be seen to, nothing is said. */
public record AlertWords(Messages messages) {
    /** Empty for {@link Alert#CLEAR}. */
    public String word(Alert alert) {
        return alert == Alert.CLEAR ? "" : messages.nameOf(alert);
    }

    /** The word before what it is about, for those who hear it. */
    public String before(Alert alert, String sentence) {
        return alert == Alert.CLEAR ? sentence : messages.of("alert.said", messages.nameOf(alert), sentence);
    }
}
