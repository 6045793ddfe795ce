package undercroft.command;

import java.util.Arrays;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.calc.light.BeerSensitivity;
import undercroft.calc.light.LightBand;
import undercroft.calc.light.LightDose;
import undercroft.calc.light.LightExposure;
import undercroft.calc.light.LightStay;
import undercroft.calc.light.Wall;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.LightSource;
import undercroft.catalogue.Listed;
import undercroft.report.Answer;
import undercroft.wording.Messages;

@Command
final class LightCommand extends AnswerCommand {
    @Option(names = "--glass", required = true)
    private String glass;

    @Option(names = "--lux", required = true)
    private String lux;

    @Option(names = "--source", required = true)
    private String source;

    @Option(names = "--hours", required = true)
    private String hours;

    @Option(names = "--ibu", defaultValue = "25")
    private String ibu;

    @Option(names = "--ebc", defaultValue = "8")
    private String ebc;

    @Option(names = "--glass-millimetres")
    private String millimetres;

    LightCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        GlassColour colour = glass(glass);
        LightSource kind = source(source);
        double illuminance = Typed.number("--lux", lux, 0, 150_000, "lx");
        double time = Typed.number("--hours", hours, 0, 100_000, "h");
        double beer = BeerSensitivity.factor(
                Typed.number("--ibu", ibu, 0, 200, "IBU"), 0, Typed.number("--ebc", ebc, 1, 200, "EBC"));
        Wall wall = millimetres == null
                ? Wall.usual(colour)
                : new Wall(colour, Typed.number("--glass-millimetres", millimetres, 0.2, 10, "mm"));
        LightExposure exposure =
                LightExposure.none(wall, beer).plus(new LightStay(kind, illuminance, true, time, Cover.NONE));
        double luxHours = LightDose.luxHoursToPerceptible(colour, wall.millimetres(), kind, beer);
        double hoursToNotice = illuminance == 0 ? Double.POSITIVE_INFINITY : luxHours / illuminance;
        double spread = exposure.uncertaintyFactor();
        LightBand band = exposure.band();
        return reply().put("dose", exposure.dose())
                .put("luxHoursToPerceptible", luxHours)
                .put("words", english().timeOrders(hoursToNotice / spread, hoursToNotice * spread))
                .say(
                        "command.light.band",
                        console().messages().capital(console().messages().name(colour)),
                        band)
                .say("command.light.time", words().timeOrders(hoursToNotice / spread, hoursToNotice * spread))
                .say("command.light.rough");
    }

    /** A colour by its id, or by the word its English name begins with, such as brown or clear. */
    private static GlassColour glass(String id) {
        return Arrays.stream(GlassColour.values())
                .filter(colour -> Messages.english().name(colour).equals(id + " glass"))
                .findFirst()
                .orElseGet(() -> Listed.find(GlassColour.class, id, "--glass"));
    }

    /** A kind of light by its own id, or by the id of a place whose light it is. */
    private static LightSource source(String id) {
        return Arrays.stream(LightPlace.values())
                .filter(place -> place.id().equals(id))
                .map(LightPlace::source)
                .findFirst()
                .orElseGet(() -> Listed.find(LightSource.class, id, "--source"));
    }
}
