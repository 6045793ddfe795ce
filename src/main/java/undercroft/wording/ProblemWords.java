package undercroft.wording;

import undercroft.outlook.Problem;

/** What keeps a figure from being made, and where. */
public record ProblemWords(ShelfWords words) {
    /** What an empty room is taken for, °C; {@link undercroft.outlook.climate.PlaceClimate} has it. */
    private static final double UNKNOWN_ROOM_CELSIUS = 18;

    public String where(Problem problem) {
        return switch (problem.kind()) {
            case BATCH -> words.of("problem.where.batch", problem.id());
            case NO_TEMPERATURES, LOG_ENDED -> words.of("problem.where.place", problem.id());
            case LEFT_OUT -> problem.id();
        };
    }

    public String what(Problem problem) {
        return switch (problem.kind()) {
            case NO_TEMPERATURES ->
                words.of("problem.no-temperatures", words.format().wholeCelsius(UNKNOWN_ROOM_CELSIUS));
            case LOG_ENDED ->
                words.of("problem.log-ended", words.day(problem.since().orElseThrow()));
            case LEFT_OUT ->
                words.of(
                        "problem.left-out",
                        words.format().messages().what(problem.fault().orElseThrow()));
            case BATCH -> words.format().messages().fault(problem.fault().orElseThrow());
        };
    }
}
