package undercroft.command;

import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Listed;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Volume;

/** The bottle of a question: a standard make, its fill changed if wanted, or any bottle by brimful and fill. */
final class BottleOption {
    private static final BottleType PATTERN = Bottles.STANDARD.get(0);

    @Option(names = "--bottle")
    private String bottle;

    @Option(names = "--fill")
    private String fill;

    @Option(names = "--brimful")
    private String brimful;

    BottleType type() {
        if (bottle == null && (fill == null || brimful == null)) {
            throw new InvalidInput("--bottle", "command.fault.no-bottle");
        }
        BottleType made = bottle == null ? null : Listed.find(Bottles.STANDARD, bottle, "--bottle");
        BottleType pattern = made == null ? PATTERN : made;
        double full = brimful == null
                ? pattern.brimfulMillilitres()
                : Typed.read("--brimful", brimful, Volume::parse).millilitres();
        double beer = fill == null
                ? pattern.fillMillilitres()
                : Typed.read("--fill", fill, Volume::parse).millilitres();
        return OptionFaults.naming(
                () -> new BottleType(
                        made == null ? "given" : made.id(),
                        made == null ? "given" : made.label(),
                        made == null ? GlassColour.AMBER : made.colour(),
                        made == null ? BottleClass.STANDARD : made.bottleClass(),
                        made == null ? Closure.CROWN : made.closure(),
                        beer,
                        full,
                        pattern.wallMillimetres(),
                        made == null ? beer * 0.6 : made.emptyGrams(),
                        pattern.bodyMillimetres(),
                        OptionalDouble.empty()),
                "fillMillilitres",
                "--fill",
                "brimfulMillilitres",
                "--fill");
    }
}
