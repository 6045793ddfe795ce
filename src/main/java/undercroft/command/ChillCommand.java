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

@Command
final class ChillCommand extends AnswerCommand {
    @Mixin
    private BottleOption bottle = new BottleOption();

    @Option(names = "--from", required = true)
    private String from;

    @Option(names = "--fridge", required = true)
    private String fridge;

    @Option(names = "--to", required = true)
    private String to;

    @Option(names = "--count", defaultValue = "1")
    private int count;

    @Option(names = "--in", defaultValue = "fridge")
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
            throw new InvalidInput("--to", "command.fault.warmer");
        }
        Cooling cooling = Cooling.of(type, place, cold, count);
        Optional<Interval> minutes = cooling.minutesSpread(start, goal);
        Answer answer = reply();
        minutes.ifPresentOrElse(spread -> answer.put("minutes", spread), () -> answer.put("minutes", Double.NaN));
        answer.put("timeConstantMinutes", cooling.timeConstantMinutes(start));
        if (minutes.isEmpty()) {
            return answer.say("command.chill.never", words().celsius(cold), words().celsius(goal));
        }
        answer.say(
                "command.chill.minutes",
                words().number(minutes.get().median(), 0),
                words().celsius(start),
                words().celsius(goal),
                words().range(minutes.get(), 0),
                count,
                cooling.arrangement());
        if (place == CoolingMedium.FREEZER) {
            FreezerAlarm alarm =
                    FreezerAlarm.of(BottleThermal.of(type), start, cold, FreezerAlarm.USUAL_FREEZING_CELSIUS);
            answer.say("command.chill.alarm", words().numberDown(alarm.alarmMinutes(), 0));
        }
        return answer;
    }

    private static double celsius(String option, String text) {
        return Check.within(option, Typed.read(option, text, Temperature::parse).celsius(), -30, 60, "°C");
    }
}
