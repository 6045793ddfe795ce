package undercroft.view.edit;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import undercroft.app.Texts;

/** One sentence to say yes to; nothing happens otherwise. */
final class Question {
    private Question() {}

    /** Without {@code yes} the sentence only tells. */
    static void ask(Dialogs dialogs, Stage over, String sentence, Optional<String> yes, Runnable act) {
        Label words = new Label(sentence);
        words.setId("question-sentence");
        words.setWrapText(true);
        words.setMinHeight(Label.USE_PREF_SIZE);
        FormDialog dialog = dialogs.bare(over, Texts.of("form.question.title"), words);
        dialog.stage().getScene().getRoot().getStyleClass().add("question");
        yes.ifPresent(button -> dialog.confirm(button, () -> {
            dialog.close();
            act.run();
        }));
        dialog.show(Optional.empty());
    }
}
