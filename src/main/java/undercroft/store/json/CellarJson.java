package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.Serving;
import undercroft.cellar.Settings;
import undercroft.cellar.TaskNote;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.quantity.UnitSystem;

/**
 * A cellar together with the bytes and the tree it was read from, so that what this program does not know goes back
 * where it stood.
 */
public final class CellarJson {
    public static final int SCHEMA = 2;

    private final Cellar cellar;
    private final byte[] bytes;
    private final ObjectNode tree;
    private final int schema;

    private CellarJson(Cellar cellar, byte[] bytes, ObjectNode tree, int schema) {
        this.cellar = cellar;
        this.bytes = bytes;
        this.tree = tree;
        this.schema = schema;
    }

    public Cellar cellar() {
        return cellar;
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    /** The schema of the bytes. */
    public int schema() {
        return schema;
    }

    /** Whether a newer version wrote it: it can be looked at, but writing it would lose what this version does not know. */
    public boolean isNewer() {
        return schema > SCHEMA;
    }

    /** The cellar in the bytes, or the first fault; {@code file} names them in it. */
    public static CellarJson read(byte[] bytes, String file) {
        List<InvalidInput> faults = new ArrayList<>();
        CellarJson read = read(bytes, file, faults);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        return read;
    }

    /** The cellar in the bytes; null, with all faults that can be told noted, when it is not sound. */
    public static CellarJson read(byte[] bytes, String file, List<InvalidInput> faults) {
        List<InvalidInput> found = new ArrayList<>();
        CellarJson read = null;
        try {
            ObjectNode tree = JsonText.parse(bytes);
            int schema = schemaOf(tree, found);
            ObjectNode known = schema == SchemaOne.NUMBER ? SchemaOne.upgraded(tree) : tree;
            Cellar cellar = readCellar(new JsonFields(known, "", found));
            KeptKeys.refuseUnwritable(known, "", found);
            if (found.isEmpty()) {
                read = new CellarJson(cellar, bytes, known, schema);
            } else if (schema > SCHEMA) {
                found.clear();
                found.add(newer(schema, "store.newer.open"));
            } else if (schema == SchemaOne.NUMBER) {
                found.replaceAll(SchemaOne::asInFile);
            }
        } catch (InvalidInput fault) {
            found.add(fault);
        }
        for (InvalidInput fault : found) {
            String where = fault.where().isEmpty() ? file : file + ": " + fault.where();
            faults.add(fault.at(where));
        }
        return read;
    }

    /** A cellar that was never on a disk. */
    public static CellarJson of(Cellar cellar, String writtenBy) {
        ObjectNode tree = write(cellar, writtenBy);
        return new CellarJson(cellar, JsonText.print(tree), tree, SCHEMA);
    }

    /** The changed cellar, with the unknown keys of this one. */
    public CellarJson with(Cellar changed, String writtenBy) {
        ObjectNode changedTree = write(changed, writtenBy);
        KeptKeys.carryOver(tree, write(cellar, writtenBy), changedTree);
        return new CellarJson(changed, JsonText.print(changedTree), changedTree, SCHEMA);
    }

    private static Cellar readCellar(JsonFields fields) {
        String name = fields.text("name");
        ZoneId zone = fields.parsed("zone", ZoneId::of, "store.fault.zone");
        Settings settings = fields.optionalObject("settings", CellarJson::readSettings, Settings.USUAL);
        List<Place> places = fields.list("places", PlaceJson::read);
        List<Batch> batches = fields.list("batches", BatchJson::read);
        List<Serving> servings = fields.optionalList("servings", ServingJson::read);
        List<BottleType> bottles = fields.optionalList("bottles", CatalogueJson::readBottle);
        List<Sugar> sugars = fields.optionalList("sugars", CatalogueJson::readSugar);
        List<TaskNote> taskNotes = fields.optionalList("taskNotes", TaskNoteJson::read);
        return fields.made(
                () -> new Cellar(name, zone, settings, places, batches, servings, bottles, sugars, taskNotes));
    }

    /** Stops at once where there is no schema: what is no cellar file is not to be judged field by field. */
    private static int schemaOf(ObjectNode tree, List<InvalidInput> faults) {
        int schema = new JsonFields(tree, "", faults).whole("schema");
        if (!faults.isEmpty()) {
            throw faults.remove(0);
        }
        if (schema < SchemaOne.NUMBER) {
            throw new InvalidInput("schema", "store.fault.no-schema", schema, SCHEMA);
        }
        return schema;
    }

    /** What to say of a file that a newer version wrote; {@code advice} is the key of what to do. */
    public static InvalidInput newer(int schema, String advice) {
        return new InvalidInput("schema", "store.fault.newer", schema, SCHEMA, Phrase.of(advice));
    }

    private static ObjectNode write(Cellar cellar, String writtenBy) {
        JsonWriter json = new JsonWriter()
                .put("schema", SCHEMA)
                .put("writtenBy", writtenBy)
                .put("name", cellar.name())
                .put("zone", cellar.zone().getId())
                .put("settings", writeSettings(cellar.settings()))
                .put("places", cellar.places(), PlaceJson::write)
                .put("batches", cellar.batches(), BatchJson::write)
                .put("servings", cellar.servings(), ServingJson::write)
                .put("bottles", cellar.ownBottles(), CatalogueJson::writeBottle)
                .put("sugars", cellar.ownSugars(), CatalogueJson::writeSugar);
        if (!cellar.taskNotes().isEmpty()) {
            json.put("taskNotes", cellar.taskNotes(), TaskNoteJson::write);
        }
        return json.node();
    }

    private static Settings readSettings(JsonFields fields) {
        String units = fields.text("units");
        double altitudeMetres = fields.number("altitudeMetres");
        Optional<String> page = fields.optionalText("pageAddress");
        Optional<Instant> learnsSince = fields.optionalInstant("learnsSince");
        return fields.made(() -> new Settings(unitsOf(units), altitudeMetres, page, learnsSince));
    }

    private static UnitSystem unitsOf(String id) {
        for (UnitSystem units : UnitSystem.values()) {
            if (idOf(units).equals(id)) {
                return units;
            }
        }
        throw new InvalidInput("units", "fault.unknown", id, "metric, us");
    }

    private static String idOf(UnitSystem units) {
        return units.name().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode writeSettings(Settings settings) {
        return new JsonWriter()
                .put("units", idOf(settings.units()))
                .put("altitudeMetres", settings.altitudeMetres())
                .putTold("pageAddress", settings.pageAddress().orElse(""))
                .putTold(
                        "learnsSince",
                        settings.learnsSince().map(Instant::toString).orElse(""))
                .node();
    }
}
