package undercroft.view.evidence;

import java.time.Instant;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.evidence.EvidencePage;
import undercroft.app.evidence.EvidenceViewModel;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.Widths;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** What was seen of a batch, what explains it, what it changed and what would make more known. */
public final class EvidencePane extends VBox {
    private static final double LISTS = 400;
    private static final double BESIDE = 900;
    private static final double PLOTS = 420;

    private final EvidenceViewModel model;
    private final WindowContext context;
    private final Messages messages;
    private final PlotsView plots;
    private final Button back;
    private final Label title = new Label();
    private final VBox lists = new VBox(12);
    private final StackPane card;
    private final ScrollPane scroll = new ScrollPane();
    private boolean beside = true;

    public EvidencePane(EvidenceViewModel model, WindowContext context, Messages messages) {
        super(8);
        this.model = model;
        this.context = context;
        this.messages = messages;
        setId("evidence-page");
        getStyleClass().add("evidence-page");
        setMinWidth(0);
        plots = new PlotsView(messages, second -> words().dayAndTime(Instant.ofEpochSecond(second)));
        plots.setId("evidence-plots");
        PlotMenu.on(plots, context, messages, title::getText);
        back = new Button(messages.of("evidence.page.back", ""));
        back.setId("evidence-back");
        back.getStyleClass().add("quiet");
        back.setMinWidth(USE_PREF_SIZE);
        back.setOnAction(event -> model.stop());
        title.getStyleClass().add("batch-title");
        HBox bar = new HBox(12, back, title);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("batch-bar");
        card = new StackPane(plots);
        card.getStyleClass().addAll("card", "plot-card");
        card.setMinWidth(0);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("page-scroll");
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(bar, scroll);
        Widths.follow(this, width -> {
            beside = width >= BESIDE;
            arrange();
        });
        model.pageProperty().addListener((property, before, after) -> fill());
        model.faultProperty().addListener((property, before, after) -> fill());
        context.dark().addListener((property, before, after) -> fill());
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        arrange();
        fill();
    }

    /** Puts the keyboard on the way back. */
    public void takeFocus() {
        back.requestFocus();
    }

    private void key(KeyEvent event) {
        if (Shortcut.LEAVE.matches(event)) {
            model.stop();
            event.consume();
        }
    }

    private ShelfWords words() {
        return ShelfWords.of(context.forecasts().outlookProperty().get(), messages);
    }

    private void arrange() {
        if (beside) {
            ScrollPane left = new ScrollPane(lists);
            left.setFitToWidth(true);
            left.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
            left.setFocusTraversable(false);
            left.getStyleClass().add("page-scroll");
            left.setMinWidth(LISTS);
            left.setPrefWidth(LISTS);
            HBox.setHgrow(card, Priority.ALWAYS);
            card.setMinHeight(0);
            scroll.setContent(new HBox(16, left, card));
            scroll.setFitToHeight(true);
        } else {
            card.setMinHeight(PLOTS);
            scroll.setContent(new VBox(12, lists, card));
            scroll.setFitToHeight(false);
        }
    }

    private void fill() {
        EvidencePage page = model.pageProperty().get();
        card.setVisible(page != null);
        if (page == null) {
            String said = model.faultProperty().get();
            lists.getChildren().setAll(plain(said.isEmpty() ? messages.of("evidence.page.working") : said, "faint"));
            return;
        }
        title.setText(page.title());
        back.setText(messages.of("evidence.page.back", page.name()));
        lists.getChildren().setAll(verdict(page), explanations(page), seen(page), next(page));
        plots.setPalette(Looks.palette(context.dark().get()));
        plots.show(page.picture(), true);
    }

    private Node verdict(EvidencePage page) {
        return card("evidence-verdict", plain(page.headline(), "emphasis"), plain(page.change(), ""));
    }

    private Node explanations(EvidencePage page) {
        VBox card = card("evidence-explanations", heading("evidence.title"));
        for (EvidencePage.Chance chance : page.explanations()) {
            ChanceBar bar = new ChanceBar(chance.before(), chance.now());
            Label now = new Label(chance.line().now());
            now.getStyleClass().add("emphasis");
            Label before = new Label(
                    messages.of("evidence.before") + " " + chance.line().before());
            before.getStyleClass().add("faint");
            HBox row = new HBox(10, bar, now, before);
            row.setAlignment(Pos.CENTER_LEFT);
            card.getChildren().addAll(plain(chance.line().what(), ""), row);
        }
        card.getChildren().add(plain(messages.of("evidence.means"), "faint"));
        return card;
    }

    private Node seen(EvidencePage page) {
        VBox card = card("evidence-seen", heading("evidence.seen.title"));
        if (page.seen().isEmpty()) {
            card.getChildren().add(plain(messages.of("evidence.seen.none"), "faint"));
        }
        for (EvidenceWords.Seen each : page.seen()) {
            card.getChildren().add(plain(each.when() + " · " + each.what(), "emphasis"));
            List<String> parts =
                    each.foretold().isEmpty() ? List.of(each.limit()) : List.of(each.foretold(), each.limit());
            card.getChildren().add(plain(String.join(" · ", parts), "faint"));
        }
        return card;
    }

    private Node next(EvidencePage page) {
        VBox card = card("evidence-next", heading("evidence.next.title"));
        if (!page.canBeSharpened()) {
            card.getChildren().add(plain(messages.of("evidence.next.none"), "faint"));
        }
        for (EvidenceWords.Next each : page.next()) {
            if (each.isWorthIt()) {
                card.getChildren().add(plain(each.what(), "emphasis"));
                card.getChildren().add(plain(each.after(), ""));
                card.getChildren().add(plain(each.cost(), "faint"));
            }
        }
        return card;
    }

    private Label heading(String key) {
        Label heading = new Label(messages.of(key));
        heading.getStyleClass().add("section-title");
        return heading;
    }

    private static VBox card(String id, Node... content) {
        VBox card = new VBox(4, content);
        card.setId(id);
        card.getStyleClass().addAll("card", "compare-card");
        return card;
    }

    private static Label plain(String words, String styleClass) {
        Label label = new Label(words);
        if (!styleClass.isEmpty()) {
            label.getStyleClass().add(styleClass);
        }
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
