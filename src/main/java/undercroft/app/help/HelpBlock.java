package undercroft.app.help;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** A part of a topic of the help. */
public sealed interface HelpBlock {
    /** What is left of it where only what is looked for is shown; empty where nothing is. */
    Optional<HelpBlock> holding(Predicate<String> wanted);

    private static Optional<HelpBlock> whole(HelpBlock block, boolean isWanted) {
        return Optional.of(block).filter(each -> isWanted);
    }

    record Heading(String text) implements HelpBlock {
        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            return whole(this, wanted.test(text));
        }
    }

    record Paragraph(String text) implements HelpBlock {
        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            return whole(this, wanted.test(text));
        }
    }

    /** What to do, one after the other. */
    record Steps(List<String> all) implements HelpBlock {
        public Steps {
            all = List.copyOf(all);
        }

        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            return whole(this, all.stream().anyMatch(wanted));
        }
    }

    /** What holds at once, in no order. */
    record Points(List<String> all) implements HelpBlock {
        public Points {
            all = List.copyOf(all);
        }

        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            return whole(this, all.stream().anyMatch(wanted));
        }
    }

    /** Words and what they mean. */
    record Terms(List<Term> all) implements HelpBlock {
        public Terms {
            all = List.copyOf(all);
        }

        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            List<Term> found = all.stream()
                    .filter(term -> wanted.test(term.name() + " " + term.text()))
                    .toList();
            return Optional.<HelpBlock>of(new Terms(found)).filter(block -> !found.isEmpty());
        }
    }

    record Term(String name, String text) {}

    /** The first column names what a row is about. */
    record Table(List<String> columns, List<List<String>> rows) implements HelpBlock {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }

        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            List<List<String>> found = rows.stream()
                    .filter(row -> wanted.test(String.join(" ", row)))
                    .toList();
            return Optional.<HelpBlock>of(new Table(columns, found)).filter(block -> !found.isEmpty());
        }
    }

    /**
     * A picture of the window.
     *
     * @param name of its file, without the ending that says the colours and the language
     */
    record Picture(String name, String description) implements HelpBlock {
        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            return Optional.empty();
        }
    }

    /** A library under its licence. */
    record Licensed(Library library) implements HelpBlock {
        @Override
        public Optional<HelpBlock> holding(Predicate<String> wanted) {
            return whole(this, wanted.test(library.name() + " " + library.licence()));
        }
    }
}
