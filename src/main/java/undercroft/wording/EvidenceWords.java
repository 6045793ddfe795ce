package undercroft.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.calc.conditioning.Explanation;
import undercroft.cellar.Draw;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Evidence;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.quantity.Interval;

/** What was seen of a batch and what may explain it, in words: the same on the page of a batch and in a report. */
public record EvidenceWords(ShelfWords words) {
    /**
     * A line of what may explain a batch.
     *
     * @param before the chance before anything was read of it or burst
     * @param now the chance with all that was seen
     */
    public record Line(String what, String before, String now) {}

    /** Bottles that burst, and the question why, or what was answered. */
    public record Question(Evidence.Burst burst, String asked, Optional<String> answered) {}

    /** What may explain the batch, each with its chance; none while nothing was read and nothing burst. */
    public List<Line> lines(BatchOutlook batch) {
        if (!isSeen(batch)) {
            return List.of();
        }
        Evidence evidence = batch.mainLot().evidence();
        return lines(evidence.before(), evidence.now());
    }

    /** The three explanations with their chances. */
    public List<Line> lines(Explanation before, Explanation now) {
        return List.of(
                line("evidence.as-written-down", before.asWrittenDown(), now.asWrittenDown()),
                line("evidence.more-sugar", before.moreSugar(), now.moreSugar()),
                line("evidence.more-to-ferment", before.moreToFerment(), now.moreToFerment()));
    }

    /**
     * Something seen beside what was foretold for it.
     *
     * @param foretold empty for what nothing was foretold for, such as a burst
     */
    public record Seen(String when, String what, String foretold, String limit) {}

    /** A reading that would make more known, and what it costs. */
    public record Next(String what, String cost, String after, boolean isWorthIt) {}

    /** What was seen, step by step, with the heat limit after it. */
    public List<Seen> seen(EvidenceCourse course) {
        List<Seen> all = new ArrayList<>();
        for (EvidenceCourse.Step step : course.steps()) {
            String limit = words.of("evidence.limit", words.format().celsiusLimit(step.heatLimitCelsius()));
            String when = words.day(step.at());
            for (EvidenceCourse.Foretold each : step.read()) {
                all.add(new Seen(when, what(each.reading()), foretold(each), limit));
            }
            if (step.burst() > 0) {
                all.add(new Seen(when, words.of("evidence.read.burst", step.burst()), "", limit));
            }
        }
        return all;
    }

    /** A reading in a few words. */
    public String what(Reading reading) {
        QuantityFormat format = words.format();
        if (reading instanceof Reading.Gauge gauge) {
            return words.of("batch.reading.gauge", format.bar(gauge.gaugeBar()));
        }
        if (reading instanceof Reading.Squeeze squeeze) {
            return words.of("batch.reading.squeeze", squeeze.feel());
        }
        if (reading instanceof Reading.Opened opened) {
            return words.of("batch.reading.opened", opened.perceivedCarbonation());
        }
        return words.of("batch.reading.gravity", format.number(((Reading.Density) reading).specificGravity(), 3));
    }

    private String foretold(EvidenceCourse.Foretold each) {
        Interval range = each.foretold();
        double low = read(each.reading(), true);
        double high = read(each.reading(), false);
        String where = low > range.high() ? "above" : high < range.low() ? "below" : "within";
        return words.of("evidence.foretold." + where, range(each.reading(), range));
    }

    /** The least or the most that a reading says, in the unit of what is foretold for it. */
    private static double read(Reading reading, boolean least) {
        if (reading instanceof Reading.Gauge gauge) {
            return gauge.gaugeBar();
        }
        if (reading instanceof Reading.Squeeze squeeze) {
            return least ? squeeze.feel().fromBar() : squeeze.feel().untilBar();
        }
        if (reading instanceof Reading.Opened opened) {
            return least
                    ? opened.perceivedCarbonation().fromVolumes()
                    : opened.perceivedCarbonation().untilVolumes();
        }
        return ((Reading.Density) reading).specificGravity();
    }

    private String range(Reading reading, Interval range) {
        QuantityFormat format = words.format();
        if (reading instanceof Reading.Gauge || reading instanceof Reading.Squeeze) {
            return format.barRange(range);
        }
        return reading instanceof Reading.Opened
                ? format.volumeRange(range)
                : words.of("evidence.range", format.gravity(range.low()), format.gravity(range.high()));
    }

    /** What one more reading would teach; a range is that of the carbonation in the end. */
    public List<Next> next(EvidenceCourse course) {
        return course.next().stream()
                .map(each -> new Next(
                        words.of(Keys.of("evidence.next", each.kind())),
                        words.of(Keys.of("evidence.cost", each.kind())),
                        words.of(
                                "evidence.next.after",
                                words.format().volumes(each.volumesWideAfter()),
                                words.format().volumes(each.volumesWideNow())),
                        each.isWorthIt()))
                .toList();
    }

    /** What the ranges were and are: carbonation at the end, and the pressure of the strongest bottle now. */
    public String bands(EvidenceCourse course) {
        QuantityFormat format = words.format();
        return words.of(
                "evidence.bands",
                format.volumeRange(course.before().carbonation().atEnd()),
                format.volumeRange(course.now().carbonation().atEnd()),
                format.barRange(course.before().pressure().strongestBottle()),
                format.barRange(course.now().pressure().strongestBottle()));
    }

    /** How the heat limit changed by what was seen. */
    public String change(EvidenceCourse course) {
        String before = words.format().celsiusLimit(course.before().pressure().heatLimitCelsius());
        String now = words.format().celsiusLimit(course.now().pressure().heatLimitCelsius());
        if (course.steps().isEmpty()) {
            return words.of("evidence.change.unread", now);
        }
        return before.equals(now)
                ? words.of("evidence.change.same", now)
                : words.of("evidence.change.other", before, now);
    }

    private Line line(String key, double before, double now) {
        return new Line(
                words.of(key), words.format().percent(before), words.format().percent(now));
    }

    /** Each burst with its question, the newest first. */
    public List<Question> questions(BatchOutlook batch) {
        List<Question> questions = new ArrayList<>();
        if (batch.isCapped()) {
            for (Evidence.Burst burst : batch.mainLot().evidence().bursts()) {
                questions.add(
                        0,
                        new Question(
                                burst,
                                words.of("evidence.burst.asked", burst.bottles(), words.day(burst.at())),
                                burst.cause().map(cause -> words.of("evidence.burst.answered", cause))));
            }
        }
        return questions;
    }

    private static boolean isSeen(BatchOutlook batch) {
        return batch.isCapped()
                && (!batch.batch().readings().isEmpty()
                        || batch.batch().lots().stream()
                                .flatMap(lot -> lot.draws().stream())
                                .anyMatch(draw -> draw.fate() == Draw.Fate.BURST));
    }
}
