package undercroft.view;

import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.util.Duration;
import undercroft.app.shelf.ReadingEffect;
import undercroft.cellar.Cellar;
import undercroft.session.Workspace;
import undercroft.view.kit.WindowContext;

/** What was just done, in one line at the foot of the window, with the way back; gone after a while by itself. */
final class NewsView extends HBox {
    private static final Duration STAYS = Duration.seconds(9);

    private final WindowContext context;
    private final Label sentence = new Label();
    private final Button undo = new Button();
    private final PauseTransition leaving = new PauseTransition(STAYS);
    /** The cellar whose newest reading was spoken of already, which says more than that it was added. */
    private Optional<Cellar> toldOf = Optional.empty();

    NewsView(WindowContext context) {
        super(8);
        this.context = context;
        getStyleClass().add("news");
        setId("news");
        setAlignment(Pos.CENTER_LEFT);
        setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
        setPickOnBounds(true);
        sentence.setId("news-sentence");
        sentence.setWrapText(true);
        sentence.setMinHeight(USE_PREF_SIZE);
        undo.setText(context.messages().of("bar.undo.button"));
        undo.setId("news-undo");
        undo.getStyleClass().add("quiet");
        undo.setMinWidth(USE_PREF_SIZE);
        undo.setOnAction(event -> context.faults().guard(context.workspace()::undo));
        undo.managedProperty().bind(undo.visibleProperty());
        Button close = new Button(context.messages().of("news.close.button"));
        close.setId("news-close");
        close.setMinWidth(USE_PREF_SIZE);
        close.getStyleClass().add("quiet");
        close.setAccessibleText(context.messages().of("news.close.sentence"));
        close.setOnAction(event -> context.faults().forgetNews());
        getChildren().addAll(sentence, undo, close);
        leaving.setOnFinished(event -> context.faults().forgetNews());
        hoverProperty().addListener((property, before, over) -> {
            if (over) {
                leaving.stop();
            } else {
                leaving.playFromStart();
            }
        });
        context.faults().newsProperty().addListener((property, before, after) -> show(after));
        context.workspace().newestProperty().addListener((property, before, after) -> tellOf(after));
        context.forecasts()
                .outlookProperty()
                .addListener((property, before, after) -> ReadingEffect.of(before, after, context.messages())
                        .ifPresent(effect -> {
                            toldOf = Optional.of(after.cellar());
                            tell(effect, true);
                        }));
        show("");
    }

    /** Says of each step what it was; of one taken back, that it was. */
    private void tellOf(Workspace.Deed deed) {
        if (toldOf.filter(context.workspace().getCellar()::equals).isEmpty()) {
            tell(context.messages().of(deed.undone() ? "news.undone" : "news.done", deed.what()), !deed.undone());
        }
    }

    private void tell(String words, boolean canUndo) {
        context.faults().tell(words);
        undo.setVisible(canUndo);
    }

    private void show(String words) {
        undo.setVisible(false);
        sentence.setText(words);
        setVisible(!words.isEmpty());
        notifyAccessibleAttributeChanged(AccessibleAttribute.TEXT);
        if (words.isEmpty()) {
            leaving.stop();
        } else {
            leaving.playFromStart();
        }
    }
}
