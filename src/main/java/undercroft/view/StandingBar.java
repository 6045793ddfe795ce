package undercroft.view;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import undercroft.view.kit.WindowContext;

/** Says on every page that this is the demo, or that nothing can be changed, with the way out. */
final class StandingBar extends HBox {
    StandingBar(WindowContext context) {
        getStyleClass().add("standing-bar");
        setId("standing");
        setAlignment(Pos.CENTER_LEFT);
        if (context.chooser().isDemo()) {
            fill(
                    context.messages().of("bar.standing.demo"),
                    context.messages().of("bar.standing.demo-button"),
                    context.chooser()::startPage);
        } else {
            context.workspace()
                    .lookOnly()
                    .ifPresent(why -> fill(
                            context.messages()
                                    .of("bar.standing.look", context.messages().what(why)),
                            context.messages().of("bar.standing.look-button"),
                            context.chooser()::openAgain));
        }
        setVisible(!getChildren().isEmpty());
        managedProperty().bind(visibleProperty());
    }

    private void fill(String words, String button, Runnable way) {
        Label sentence = new Label(words);
        sentence.setId("standing-sentence");
        sentence.setWrapText(true);
        sentence.setMinHeight(USE_PREF_SIZE);
        sentence.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        Button out = new Button(button);
        out.setId("standing-out");
        out.getStyleClass().add("quiet");
        out.setMinWidth(USE_PREF_SIZE);
        out.setOnAction(event -> way.run());
        getChildren().addAll(sentence, out);
    }
}
