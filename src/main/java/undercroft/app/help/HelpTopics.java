package undercroft.app.help;

import java.text.Collator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import undercroft.app.help.HelpTopic.Group;
import undercroft.report.ProgramVersion;
import undercroft.wording.Keys;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** All pages of the help, in the order of their list. */
public final class HelpTopics {
    /** The page with the keys. */
    public static final String KEYS = "keys";

    /** What is called as a button calls itself: the key of its label. */
    private static final Pattern CALLED = Pattern.compile("\\[([a-z][a-z0-9.-]+)]");
    /** Chapters with a picture of the window beside them. */
    private static final Set<GuideTopic> PICTURED = EnumSet.of(
            GuideTopic.BEGIN,
            GuideTopic.BOTTLING,
            GuideTopic.SHELF,
            GuideTopic.BATCH,
            GuideTopic.SPELLS,
            GuideTopic.SERVINGS);

    private final Messages messages;

    private HelpTopics(Messages messages) {
        this.messages = messages;
    }

    /**
     * The pages.
     *
     * @param keys what the page with the keys shows; who binds them knows them
     */
    public static List<HelpTopic> of(Messages messages, QuantityFormat format, List<HelpBlock> keys) {
        HelpTopics made = new HelpTopics(messages);
        List<HelpTopic> all = new ArrayList<>();
        for (GuideTopic topic : GuideTopic.values()) {
            all.add(new HelpTopic(
                    Keys.of("guide", topic),
                    Group.GUIDE,
                    messages.of(Keys.of("guide.title", topic)),
                    made.chapter(topic)));
        }
        all.add(made.reference("numbers", new NumbersTopic(messages, format).blocks()));
        all.add(made.reference("glossary", made.glossary()));
        all.add(made.reference(KEYS, keys));
        all.add(made.reference("about", made.about()));
        return List.copyOf(all);
    }

    private HelpTopic reference(String id, List<HelpBlock> blocks) {
        return new HelpTopic(id, Group.REFERENCE, messages.of("help.topic." + id), blocks);
    }

    /** What it is about and its picture, its steps, what else there is to say. */
    private List<HelpBlock> chapter(GuideTopic topic) {
        List<HelpBlock> blocks = new ArrayList<>();
        numbered(Keys.of("guide.text", topic)).forEach(text -> blocks.add(new HelpBlock.Paragraph(text)));
        if (PICTURED.contains(topic)) {
            blocks.add(new HelpBlock.Picture(
                    Keys.of("guide", topic).replace('.', '-'),
                    messages.of("help.picture.sentence", messages.of(Keys.of("guide.title", topic)))));
        }
        if (topic == GuideTopic.DANGER) {
            blocks.add(cautions());
        }
        List<String> steps = numbered(Keys.of("guide.step", topic));
        if (!steps.isEmpty()) {
            blocks.add(new HelpBlock.Steps(steps));
        }
        String after = Keys.of("guide.after", topic);
        if (messages.has(after)) {
            blocks.add(new HelpBlock.Paragraph(said(messages.of(after))));
        }
        return blocks;
    }

    private HelpBlock cautions() {
        return new HelpBlock.Points(List.of(
                messages.of("caution.act.eyes"),
                messages.of("handling.cool-boxed"),
                messages.of("handling.cool-open"),
                messages.of("caution.act.knocks"),
                messages.of("caution.act.people"),
                messages.of("caution.estimate")));
    }

    private List<String> numbered(String beginning) {
        List<String> all = new ArrayList<>();
        for (int i = 1; messages.has(beginning + "." + i); i++) {
            all.add(said(messages.of(beginning + "." + i)));
        }
        return all;
    }

    private String said(String text) {
        return CALLED.matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(
                        messages.of("help.called", messages.of(found.group(1)).replaceFirst("…$", ""))));
    }

    private List<HelpBlock> glossary() {
        Collator order = Collator.getInstance(messages.locale());
        return List.of(new HelpBlock.Terms(Arrays.stream(Term.values())
                .map(term -> new HelpBlock.Term(
                        messages.of(Keys.of("glossary.name", term)), messages.of(Keys.of("glossary.text", term))))
                .sorted(Comparator.comparing(HelpBlock.Term::name, order))
                .toList()));
    }

    private List<HelpBlock> about() {
        List<HelpBlock> blocks = new ArrayList<>();
        blocks.add(new HelpBlock.Paragraph(ProgramVersion.number()
                .map(number -> messages.of("help.about.version", number))
                .orElseGet(() -> messages.of("help.about.unpackaged"))));
        blocks.add(new HelpBlock.Paragraph(messages.of("help.about.text")));
        blocks.add(new HelpBlock.Paragraph(messages.of("caution.estimate")));
        blocks.add(new HelpBlock.Heading(messages.of("help.about.libraries")));
        Library.ALL.forEach(library -> blocks.add(new HelpBlock.Licensed(library)));
        return blocks;
    }
}
