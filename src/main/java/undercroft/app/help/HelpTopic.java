package undercroft.app.help;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A page of the help. */
public record HelpTopic(String id, Group group, String title, List<HelpBlock> blocks) {
    public HelpTopic {
        blocks = List.copyOf(blocks);
    }

    /** What to read from the beginning, and what to look up. */
    public enum Group {
        GUIDE,
        REFERENCE
    }

    /** The same page with those parts alone that hold what is looked for; empty where none does and its title neither. */
    Optional<HelpTopic> holding(Predicate<String> wanted) {
        if (wanted.test(title)) {
            return Optional.of(this);
        }
        List<HelpBlock> found =
                blocks.stream().flatMap(block -> block.holding(wanted).stream()).toList();
        return Optional.of(new HelpTopic(id, group, title, found)).filter(topic -> !found.isEmpty());
    }
}
