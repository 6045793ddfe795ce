package undercroft.view.shelf;

import java.util.function.BiConsumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import undercroft.cellar.BurstCause;
import undercroft.outlook.lot.Evidence;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Messages;

/** Asks why a bottle burst, a button for each answer; once answered it says so and offers to change it. */
final class BurstQuestionView extends VBox {
    private final Messages messages;
    private final EvidenceWords.Question question;
    private final BiConsumer<Evidence.Burst, BurstCause> answer;

    BurstQuestionView(
            Messages messages, EvidenceWords.Question question, BiConsumer<Evidence.Burst, BurstCause> answer) {
        this.messages = messages;
        this.question = question;
        this.answer = answer;
        getStyleClass().addAll("card", "burst-question");
        setId("burst-question");
        if (question.answered().isPresent()) {
            answered(question.answered().get());
        } else {
            ask();
        }
    }

    private void ask() {
        FlowPane answers = new FlowPane(6, 6);
        for (BurstCause cause : BurstCause.values()) {
            Button button = new Button(messages.capital(messages.name(cause)));
            button.setId("burst-" + cause.id());
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> answer.accept(question.burst(), cause));
            answers.getChildren().add(button);
        }
        getChildren().setAll(wrapped(question.asked(), "strong"), answers, note());
    }

    private void answered(String said) {
        Button change = new Button(messages.of("evidence.burst.change"));
        change.setId("burst-change");
        change.getStyleClass().add("quiet");
        change.setOnAction(event -> ask());
        getChildren().setAll(wrapped(question.asked(), "strong"), wrapped(said, "burst-said"), note(), change);
    }

    private Node note() {
        return wrapped(messages.of("evidence.burst.note"), "faint");
    }

    private static Label wrapped(String words, String styleClass) {
        Label label = new Label(words);
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
