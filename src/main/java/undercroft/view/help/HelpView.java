package undercroft.view.help;

import javafx.beans.value.ObservableBooleanValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.help.HelpTopic;
import undercroft.app.help.HelpTopic.Group;
import undercroft.app.help.HelpViewModel;
import undercroft.session.BackgroundTasks;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Keys;
import undercroft.wording.Messages;

/** The pages of the help on the left, one of them on the right. */
final class HelpView extends HBox {
    private static final double LIST_WIDTH = 220;
    private static final double READABLE = 680;

    private final HelpViewModel model;
    private final Messages messages;
    private final HelpBlocks blocks;
    private final TextField find = new TextField();
    private final VBox list = new VBox();
    private final VBox page = new VBox(10);
    private final ScrollPane reading;

    HelpView(HelpViewModel model, Messages messages, BackgroundTasks tasks, ObservableBooleanValue dark) {
        this.model = model;
        this.messages = messages;
        blocks = new HelpBlocks(messages, tasks, dark);
        getStyleClass().addAll("window", "help");
        setId("help");
        find.setId("help-find");
        find.setPromptText(messages.of("help.find.prompt"));
        find.setAccessibleText(messages.of("help.find.prompt"));
        find.textProperty().bindBidirectional(model.searchProperty());
        find.setOnKeyPressed(event -> {
            if (Shortcut.CLOSE.matches(event) && !find.getText().isEmpty()) {
                find.clear();
                event.consume();
            }
        });
        list.setId("help-topics");
        list.setAccessibleText(messages.of("help.find.sentence"));
        list.getStyleClass().add("help-topics");
        ScrollPane topics = scrolling(list);
        VBox.setVgrow(topics, Priority.ALWAYS);
        VBox left = new VBox(10, find, topics);
        left.getStyleClass().add("help-left");
        left.setMinWidth(LIST_WIDTH);
        left.setPrefWidth(LIST_WIDTH);
        page.setId("help-page");
        page.getStyleClass().add("help-page");
        page.setMaxWidth(READABLE);
        StackPane middle = new StackPane(page);
        StackPane.setAlignment(page, Pos.TOP_LEFT);
        reading = scrolling(middle);
        reading.setFocusTraversable(true);
        reading.setId("help-reading");
        HBox.setHgrow(reading, Priority.ALWAYS);
        getChildren().addAll(left, reading);
        model.foundProperty().addListener((property, before, after) -> {
            fill();
            write();
        });
        model.chosenProperty().addListener((property, before, after) -> {
            fill();
            write();
        });
        fill();
        write();
    }

    void takeFocus() {
        find.requestFocus();
    }

    private static ScrollPane scrolling(Node content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        return scroll;
    }

    private void fill() {
        list.getChildren().clear();
        ToggleGroup one = new ToggleGroup();
        for (Group group : Group.values()) {
            boolean begun = false;
            for (HelpTopic topic : model.foundProperty().get()) {
                if (topic.group() == group) {
                    if (!begun) {
                        Label heading = new Label(messages.of(Keys.of("help.group", group)));
                        heading.getStyleClass().add("help-group");
                        list.getChildren().add(heading);
                        begun = true;
                    }
                    list.getChildren().add(link(topic, one));
                }
            }
        }
    }

    private ToggleButton link(HelpTopic topic, ToggleGroup one) {
        ToggleButton link = new ToggleButton(topic.title());
        link.setId("help-" + topic.id().replace('.', '-'));
        link.getStyleClass().add("help-link");
        link.setWrapText(true);
        link.setToggleGroup(one);
        link.setMaxWidth(Double.MAX_VALUE);
        link.setMinHeight(USE_PREF_SIZE);
        link.setAlignment(Pos.CENTER_LEFT);
        HelpTopic chosen = model.chosenProperty().get();
        link.setSelected(chosen != null && chosen.id().equals(topic.id()));
        link.setOnAction(event -> {
            link.setSelected(true);
            model.choose(topic);
            list.lookup("#" + link.getId()).requestFocus();
        });
        return link;
    }

    private void write() {
        HelpTopic topic = model.chosenProperty().get();
        page.getChildren().clear();
        if (topic == null) {
            page.getChildren().add(blocks.text(messages.of("help.find.none")));
            return;
        }
        page.getChildren().add(blocks.title(topic.title()));
        topic.blocks().forEach(block -> page.getChildren().add(blocks.node(block)));
        reading.setVvalue(0);
    }
}
