package undercroft.view.kit.form;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.stage.Window;

/** One sentence to say yes to; nothing happens otherwise. */
public final class QuestionDialog {
    private QuestionDialog() {}

    /** Without {@code yes} the sentence only tells. */
    public static void ask(
            FormDialogs dialogs, Window over, String title, String sentence, Optional<String> yes, Runnable act) {
        Label words = new Label(sentence);
        words.setId("question-sentence");
        words.setWrapText(true);
        words.setMinHeight(Label.USE_PREF_SIZE);
        FormDialog dialog = dialogs.bare(over, title, words);
        yes.ifPresent(button -> dialog.confirm(button, () -> {
            dialog.close();
            act.run();
        }));
        dialog.show(Optional.empty());
    }

    public static void tell(FormDialogs dialogs, Window over, String title, String sentence) {
        ask(dialogs, over, title, sentence, Optional.empty(), () -> {});
    }
}
