package undercroft.wording;

import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;

/** Why a lot may never carbonate as planned. */
record StuckWords(ShelfWords words) {
    String sentence(BatchOutlook batch, Cause cause) {
        return switch (cause.kind()) {
            case BEYOND_ALCOHOL_LIMIT ->
                words.of(
                        "stuck.alcohol",
                        words.format().number(batch.batch().beer().abvPercent(), 1),
                        words.format().number(batch.batch().yeast().strain().alcoholLimitPercent(), 0));
            case NO_SUGAR -> words.of("stuck.no-sugar");
            case READINGS_STAND_STILL ->
                words.of("stuck.still", words.day(cause.since().orElseThrow()));
            default -> throw new IllegalArgumentException(cause.kind() + " is not stuck");
        };
    }
}
