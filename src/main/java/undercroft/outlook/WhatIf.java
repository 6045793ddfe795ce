package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Interval;

/**
 * The shelf as it is beside the shelf as it would be.
 *
 * @param changes for every batch with bottles left; those that pass their limit first, the soonest before the others
 */
public record WhatIf(CellarOutlook today, CellarOutlook supposed, List<Change> changes) {
    private static final Comparator<Change> WORST_FIRST = Comparator.comparing(Change::passes)
            .reversed()
            .thenComparing(change -> change.passesAt().orElse(Instant.MAX))
            .thenComparing(Comparator.comparing(Change::alert).reversed())
            .thenComparing(Comparator.comparingDouble(Change::rise).reversed());

    public WhatIf {
        changes = List.copyOf(changes);
    }

    /**
     * What would become of a batch, told for its tightest lot.
     *
     * @param peakBefore highest pressure in the 60 days ahead as it is, bar gauge
     * @param peak the same as it would be
     * @param passesAt when the 95 % pressure first passes the limit in that time, empty when it does not
     * @param passedAnyway whether it would pass it without the supposition too
     * @param fix the coolest of the other places, in which it does not freeze, when the limit is passed and there is one
     */
    public record Change(
            String batchId,
            String batchName,
            String lotId,
            Alert alertBefore,
            Alert alert,
            Interval peakBefore,
            Interval peak,
            double workingPressureBar,
            Optional<Instant> passesAt,
            boolean passedAnyway,
            Optional<Destination> fix,
            Optional<Instant> readyBefore,
            Optional<Instant> ready) {
        public boolean passes() {
            return passesAt.isPresent();
        }

        double rise() {
            return peak.high() - peakBefore.high();
        }
    }

    public static WhatIf of(CellarOutlook today, CellarOutlook supposed) {
        List<Change> changes = new ArrayList<>();
        for (BatchOutlook before : today.batches()) {
            Optional<BatchOutlook> after = supposed.batches().stream()
                    .filter(batch -> batch.id().equals(before.id()))
                    .findFirst();
            if (after.isPresent() && before.bottlesLeft() > 0 && before.isCapped()) {
                changes.add(change(supposed, before, after.get()));
            }
        }
        changes.sort(WORST_FIRST);
        return new WhatIf(today, supposed, changes);
    }

    private static Change change(CellarOutlook supposed, BatchOutlook before, BatchOutlook after) {
        LotOutlook lot = after.limitingLot();
        LotOutlook same = before.lots().stream()
                .filter(each -> each.lot().id().equals(lot.lot().id()))
                .findFirst()
                .orElseGet(before::limitingLot);
        Optional<Instant> passes = lot.pressure().passesWorkingPressureAt();
        return new Change(
                after.id(),
                after.batch().name(),
                lot.lot().id(),
                before.alert(),
                after.alert(),
                same.pressure().peakAhead(),
                lot.pressure().peakAhead(),
                lot.pressure().workingPressureBar(),
                passes,
                same.pressure().passesWorkingPressureAt().isPresent(),
                passes.isPresent() ? supposed.coolestFor(lot) : Optional.empty(),
                before.mainLot().ready().median(),
                after.mainLot().ready().median());
    }
}
