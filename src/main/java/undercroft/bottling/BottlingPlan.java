package undercroft.bottling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.priming.Dosing;
import undercroft.calc.priming.GravityReading;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.Cellar;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Yeast;
import undercroft.quantity.Check;
import undercroft.quantity.Gravity;
import undercroft.quantity.InvalidInput;

/**
 * Everything a bottling day starts from, with every id resolved and every figure checked.
 *
 * @param bottles the bottles set out as they are used, in the order of {@code filling.bottles()}
 * @param atmosphereBar air pressure at the place, 0.5 to 1.1 bar
 * @param today no gravity is read later
 */
public record BottlingPlan(
        Beer beer,
        Yeast yeast,
        FillingPlan filling,
        List<BottleType> bottles,
        Sugar sugar,
        double atmosphereBar,
        LocalDate today) {
    private static final double LEAST_LITRES = 0.05;

    /** Refuses what does not add up: no beer for bottles, no bottles, a gravity of tomorrow. */
    public BottlingPlan {
        bottles = List.copyOf(bottles);
        Check.within("atmosphereBar", atmosphereBar, 0.5, 1.1, "bar");
        if (bottles.size() != filling.bottles().size()) {
            throw new IllegalArgumentException("bottles do not match the plan's");
        }
        if (filling.shares().bottleLitres() < LEAST_LITRES) {
            throw new InvalidInput("shares", "bottling.fault.no-beer");
        }
        if (filling.bottles().stream().mapToInt(BottleStock::available).sum() == 0) {
            throw new InvalidInput("bottles", "bottling.fault.no-bottles");
        }
        for (int i = 0; i < filling.gravities().size(); i++) {
            if (filling.gravities().get(i).day().isAfter(today)) {
                throw new InvalidInput("gravities[" + i + "].day", "bottling.fault.future");
            }
        }
    }

    /** The plan of a batch that is not capped yet. */
    public static BottlingPlan from(Cellar cellar, Batch batch, LocalDate today) {
        FillingPlan filling = batch.plan().orElseThrow(() -> new InvalidInput("plan", "bottling.fault.no-plan"));
        return of(
                batch.beer(),
                batch.yeast(),
                filling,
                cellar.bottleTypes(),
                cellar.sugars(),
                Atmosphere.barAt(cellar.settings().altitudeMetres()),
                today);
    }

    /** As the constructor, with bottles and sugar looked up by the ids of the plan. */
    public static BottlingPlan of(
            Beer beer,
            Yeast yeast,
            FillingPlan filling,
            List<BottleType> makes,
            List<Sugar> sugars,
            double atmosphereBar,
            LocalDate today) {
        List<BottleType> bottles = new ArrayList<>();
        for (int i = 0; i < filling.bottles().size(); i++) {
            BottleStock stock = filling.bottles().get(i);
            BottleType make = Listed.find(makes, stock.bottleTypeId(), "bottles[" + i + "].bottle");
            bottles.add(make.asUsed(stock.colour(), make.fillMillilitres(), stock.scuffed()));
        }
        Sugar sugar = Listed.find(sugars, filling.wish().sugarId(), "sugar");
        return new BottlingPlan(beer, yeast, filling, bottles, sugar, atmosphereBar, today);
    }

    /** How the sugar gets into the bottles. */
    public Dosing dosing() {
        return filling.wish().perBottle() ? Dosing.SPOON : Dosing.SYRUP;
    }

    /** The gravities as the calculation of an unfinished fermentation takes them. */
    public List<GravityReading> gravityReadings() {
        return filling.gravities().stream()
                .map(read -> new GravityReading(read.day(), Gravity.ofSpecific(read.specificGravity())))
                .toList();
    }

    /** Gravity at which the beer is finished, if known. */
    public Optional<Gravity> expectedFinal() {
        return beer.expectedFinalGravity().isPresent()
                ? Optional.of(Gravity.ofSpecific(beer.expectedFinalGravity().getAsDouble()))
                : Optional.empty();
    }

    /** The newest gravity read, if any. */
    public Optional<DatedGravity> lastGravity() {
        return filling.gravities().stream().max((a, b) -> a.day().compareTo(b.day()));
    }
}
