package undercroft.app.spells;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import undercroft.outlook.Destination;
import undercroft.outlook.WhatIf;
import undercroft.outlook.lot.Alert;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** Writes the answer to a supposition. */
record WhatIfWriter(WhatIf answer, ShelfWords words) {
    static WhatIfPage page(WhatIf answer, Messages messages) {
        return new WhatIfWriter(answer, ShelfWords.of(answer.today(), messages)).page();
    }

    private WhatIfPage page() {
        List<WhatIf.Change> passing =
                answer.changes().stream().filter(WhatIf.Change::passes).toList();
        Alert alert = passing.isEmpty() ? Alert.CLEAR : Alert.ACT;
        return new WhatIfPage(
                answer,
                headline(passing),
                alert,
                answer.changes().stream().map(this::line).toList());
    }

    private String headline(List<WhatIf.Change> passing) {
        if (passing.isEmpty()) {
            return words.of("whatif.headline.none");
        }
        WhatIf.Change first = passing.get(0);
        String when = words.when(first.passesAt().orElseThrow());
        return passing.size() == 1
                ? words.of("whatif.headline.single", first.batchName(), when)
                : words.of("whatif.headline.several", passing.size(), first.batchName(), when);
    }

    private WhatIfPage.Line line(WhatIf.Change change) {
        String peak = words.format().bar(change.peak().high());
        String before = words.format().bar(change.peakBefore().high());
        String sentence;
        if (change.passes()) {
            String key = change.passedAnyway() ? "whatif.line.passes-anyway" : "whatif.line.passes";
            sentence = words.of(
                    key,
                    words.format().bar(change.workingPressureBar()),
                    words.when(change.passesAt().orElseThrow()),
                    peak,
                    before);
        } else if (peak.equals(before)) {
            sentence = words.of("whatif.line.same", peak);
        } else {
            sentence = words.of("whatif.line.stays", peak, before);
        }
        return new WhatIfPage.Line(
                change,
                change.passes() ? Alert.ACT : change.alert(),
                ready(change).map(ready -> sentence + " " + ready).orElse(sentence),
                change.fix().map(this::fix).orElse(change.passes() ? words.of("whatif.fix.none") : ""),
                change.fix().map(fix -> words.of("whatif.fix.button", fix.placeName())));
    }

    private Optional<String> ready(WhatIf.Change change) {
        if (change.ready().isEmpty() || change.readyBefore().isEmpty()) {
            return Optional.empty();
        }
        long days = Math.round(
                Duration.between(change.readyBefore().get(), change.ready().get())
                                .toHours()
                        / 24.0);
        return days == 0
                ? Optional.empty()
                : Optional.of(words.of(days < 0 ? "whatif.ready.sooner" : "whatif.ready.later", Math.abs(days)));
    }

    private String fix(Destination fix) {
        return words.of(
                fix.withinLimit() ? "whatif.fix.enough" : "whatif.fix.not-enough",
                fix.placeName(),
                words.format().celsius(fix.warmestCelsius()));
    }
}
