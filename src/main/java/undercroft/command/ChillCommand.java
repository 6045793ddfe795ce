package undercroft.command;

import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import undercroft.calc.chill.BottleThermal;
import undercroft.calc.chill.Cooling;
import undercroft.calc.chill.FreezerAlarm;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Temperature;
import undercroft.report.Answer;

@Command(name = "chill", description = "How long bottles take to get cold.")
final class ChillCommand extends AnswerCommand {
    @Mixin
    private BottleOption bottle = new BottleOption();

    @Option(names = "--from", required = true, description = "temperature now, like 20C or 68F")
    private String from;

    @Option(names = "--fridge", required = true, description = "temperature of the cold place, like 5C")
    private String fridge;

    @Option(names = "--to", required = true, description = "temperature wanted, like 8C")
    private String to;

    @Option(names = "--count", defaultValue = "1", description = "bottles together (default: ${DEFAULT-VALUE})")
    private int count;

    @Option(
            names = "--in",
            defaultValue = "fridge",
            description = "fridge, fan-fridge, freezer or ice-water (default: ${DEFAULT-VALUE})")
    private String coolingMedium;

    ChillCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        BottleType type = bottle.type();
        CoolingMedium place = Listed.find(CoolingMedium.class, coolingMedium, "--in");
        double start = celsius("--from", from);
        double cold = celsius("--fridge", fridge);
        double goal = celsius("--to", to);
        Check.within("--count", count, 1, 1000);
        if (goal > start) {
            throw new InvalidInput("--to", "is warmer than the bottle is now; nothing to chill");
        }
        Cooling cooling = Cooling.of(type, place, cold, count);
        Optional<Interval> minutes = cooling.minutesSpread(start, goal);
        Answer answer = new Answer();
        minutes.ifPresentOrElse(spread -> answer.put("minutes", spread), () -> answer.put("minutes", Double.NaN));
        answer.put("timeConstantMinutes", cooling.timeConstantMinutes(start));
        if (minutes.isEmpty()) {
            return answer.say(String.format(
                    "Never: a place of %.1f °C does not bring it to %.1f °C; choose a colder place.", cold, goal));
        }
        answer.say(String.format(
                "%.0f min from %.1f to %.1f °C (%.0f to %.0f; %d together: %s). Count on the longest.",
                minutes.get().median(),
                start,
                goal,
                minutes.get().low(),
                minutes.get().high(),
                count,
                cooling.arrangement().label()));
        if (place == CoolingMedium.FREEZER) {
            FreezerAlarm alarm =
                    FreezerAlarm.of(BottleThermal.of(type), start, cold, FreezerAlarm.USUAL_FREEZING_CELSIUS);
            answer.say(String.format(
                    "Set an alarm: out after %.0f min at the latest. Freezing beer bursts its bottle.",
                    alarm.alarmMinutes()));
        }
        return answer;
    }

    private static double celsius(String option, String text) {
        return Check.within(option, Typed.read(option, text, Temperature::parse).celsius(), -30, 60, "°C");
    }
}
