package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import undercroft.app.shelf.ShelfPlan;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.RandomShelf;
import undercroft.outlook.WhatIf;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.outlook.task.Task;
import undercroft.report.ShelfJson;
import undercroft.report.page.ShelfPage;
import undercroft.wording.FigureWords;
import undercroft.wording.Headlines;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** Headline, crate, alert, To do, spells, what-if, page and data of the demo and of two hundred cellars by chance say one thing. */
class OneVerdictTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int CELLARS = 200;

    private static List<CellarOutlook> chance;

    @BeforeAll
    static void reckon() {
        chance = IntStream.range(0, CELLARS)
                .parallel()
                .mapToObj(RandomShelf::outlook)
                .toList();
    }

    @AfterAll
    static void forget() {
        chance = null;
    }

    @Test
    void whateverShowsABatchShowsTheSameVerdict() {
        check(DemoShelf.outlook());
        chance.parallelStream().forEach(OneVerdictTest::check);
    }

    private static void check(CellarOutlook outlook) {
        ShelfWords words = ShelfWords.of(outlook, Messages.english());
        ShelfPlan plan = ShelfPlan.of(outlook, ShelfPlan.Order.ATTENTION, Messages.english());
        JsonNode data = json(outlook);
        StringWriter page = new StringWriter();
        ShelfPage.write(words, Map.of(), page);
        String html = page.toString().replace('\u00a0', ' ');
        WhatIf nothing = WhatIf.of(outlook, outlook);
        for (BatchOutlook batch : outlook.batches()) {
            String name = outlook.cellar().name() + "/" + batch.id();
            Alert alert = batch.alert();
            crates(name, plan, batch);
            tasks(name, outlook, batch);
            data(name, data, batch);
            String headline = new Headlines(words).of(batch);
            assertTrue(html.contains(escaped(headline)), name + " page: " + headline);
            if (batch.bottlesLeft() > 0) {
                limit(name, words, headline, batch);
                WhatIf.Change change = nothing.changes().stream()
                        .filter(each -> each.batchId().equals(batch.id()))
                        .findFirst()
                        .orElseThrow();
                assertEquals(alert, change.alert(), name + " what if nothing");
                assertEquals(
                        batch.lot(change.lotId()).pressure().peakAhead(), change.peak(), name + " what if nothing");
            } else {
                assertEquals(Alert.CLEAR, alert, name + " has no bottle left");
            }
        }
        outlook.spells().forEach(spell -> spell(outlook, spell));
    }

    /** The crates of a batch, one in each place, are together as grave as the batch. */
    private static void crates(String name, ShelfPlan plan, BatchOutlook batch) {
        List<ShelfPlan.Crate> crates = plan.planks().stream()
                .flatMap(plank -> plank.crates().stream())
                .filter(crate -> crate.batchId().equals(batch.id()))
                .toList();
        Alert gravest = crates.stream().map(ShelfPlan.Crate::alert).reduce(Alert.CLEAR, Alert::or);
        assertEquals(batch.alert(), gravest, name + " crates");
    }

    /** What is to be done has its cause in the verdict; what must be acted on for its pressure or frost is to be done. */
    private static void tasks(String name, CellarOutlook outlook, BatchOutlook batch) {
        List<Task> tasks = outlook.tasksOf(batch);
        for (Task task : tasks) {
            task.cause()
                    .ifPresent(cause -> assertTrue(
                            batch.verdict().causes().contains(cause), name + " asks for " + task + " without a cause"));
            assertTrue(
                    task.cause().isEmpty() || task.alert().compareTo(batch.alert()) <= 0,
                    name + " " + task + " is graver than the batch");
        }
        if (batch.verdict().danger() == Alert.ACT) {
            assertTrue(
                    tasks.stream().anyMatch(task -> task.alert() == Alert.ACT),
                    name + " wants something done, and To do says nothing: " + batch.verdict());
        }
    }

    private static void data(String name, JsonNode data, BatchOutlook batch) {
        JsonNode node = find(data.get("batches"), batch.id());
        assertEquals(batch.alert().name(), node.get("alert").asText(), name);
        assertEquals(batch.verdict().causes().size(), node.get("causes").size(), name);
        for (LotOutlook lot : batch.lots()) {
            JsonNode pressure = find(node.get("lots"), lot.id()).get("pressure");
            JsonNode told = pressure.get("heatLimitCelsius");
            double limit = lot.pressure().heatLimitCelsius();
            boolean isTold = Double.isInfinite(limit)
                    ? told.isNull()
                    : told.asDouble() <= limit && told.asDouble() > limit - 0.01;
            assertTrue(isTold, name + " limit " + told + " of " + limit);
        }
    }

    private static JsonNode find(JsonNode all, String id) {
        for (JsonNode each : all) {
            if (each.get("id").asText().equals(id)) {
                return each;
            }
        }
        throw new AssertionError("no " + id);
    }

    /** A heat limit in the headline is that of the weakest lot, and so is the tile's; both are rounded down. */
    private static void limit(String name, ShelfWords words, String headline, BatchOutlook batch) {
        double least = batch.lots().stream()
                .filter(lot -> lot.left() > 0)
                .mapToDouble(lot -> lot.pressure().heatLimitCelsius())
                .min()
                .orElseThrow();
        LotOutlook speaks = batch.lotFor(FigureKind.HEAT_LIMIT);
        assertEquals(least, speaks.pressure().heatLimitCelsius(), name);
        String told = words.format().heatLimit(least);
        String tile = new FigureWords(words).value(speaks, FigureKind.HEAT_LIMIT);
        assertTrue(tile.contains(told), name + " tile " + tile + ", limit " + told);
        // A headline about one lot names that lot and its own limit.
        String ofLeading = batch.verdict()
                .leading()
                .flatMap(Cause::lotId)
                .map(id -> words.format().heatLimit(batch.lot(id).pressure().heatLimitCelsius()))
                .orElse(told);
        if (headline.contains("heat limit ") && Double.isFinite(least)) {
            assertTrue(
                    headline.contains(told) || headline.contains(ofLeading),
                    name + " headline " + headline + ", limit " + told);
        }
    }

    /** A lot that a spell took over its working pressure is not well afterwards. */
    private static void spell(CellarOutlook outlook, SpellReview spell) {
        for (SpellImpact impact : spell.impacts()) {
            LotOutlook lot = outlook.batch(impact.batchId()).lot(impact.lotId());
            if (lot.left() > 0 && impact.hoursOverWorkingPressure() > 0) {
                assertTrue(
                        lot.verdict().alert(Cause.Topic.PRESSURE) != Alert.CLEAR,
                        outlook.cellar().name() + ": " + impact + " but " + lot.verdict());
            }
            assertTrue(
                    impact.alert().compareTo(Alert.ACT) != 0
                            || lot.left() == 0
                            || lot.verdict().danger() != Alert.CLEAR,
                    outlook.cellar().name() + ": " + impact + " but " + lot.verdict());
        }
    }

    private static JsonNode json(CellarOutlook outlook) {
        try {
            return JSON.readTree(ShelfJson.of(outlook));
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    private static String escaped(String text) {
        return text.replace('\u00a0', ' ').replace("&", "&amp;").replace("<", "&lt;");
    }

    /** The generator makes what the walk is about. */
    @Test
    void theCellarsByChanceHoldAllGrades() {
        Map<Alert, Long> grades = chance.stream()
                .flatMap(outlook -> outlook.batches().stream())
                .collect(Collectors.groupingBy(BatchOutlook::alert, Collectors.counting()));
        for (Alert alert : Alert.values()) {
            assertTrue(grades.getOrDefault(alert, 0L) > CELLARS / 20, "" + grades);
        }
    }
}
