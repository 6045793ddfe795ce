package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;
import undercroft.wording.English;

class FolderCheckTest {
    private static final String SOUND = "time,celsius\n2026-01-01T00:00:00Z,4\n";

    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        Files.createDirectory(folder.resolve("temperatures"));
        write("loft", SOUND);
    }

    private void write(String place, String text) throws IOException {
        Files.writeString(folder.resolve("temperatures/" + place + ".csv"), text);
    }

    private List<String> places() {
        return CellarStore.faults(folder).stream()
                .map(fault -> fault.key().equals(InvalidInput.LINE)
                        ? fault.where() + ": line " + fault.arguments().get(0)
                        : fault.where())
                .toList();
    }

    @Test
    void aSoundFolderHasNoFaultAndIsNotTouched() throws IOException {
        Map<String, String> before = RichCellar.contents(folder);
        assertEquals(List.of(), places());
        assertEquals(before, RichCellar.contents(folder));
        assertEquals(false, Files.exists(folder.resolve("cellar.lock")));
    }

    @Test
    void faultsOfAllFilesAreToldTogether() throws IOException {
        Path json = folder.resolve("cellar.json");
        Files.writeString(json, Files.readString(json).replace("\"count\": 6,", "\"count\": 0,"));
        write("loft", SOUND + "2025-01-01T00:00:00Z,4\n2026-01-02T00:00:00Z,NaN\n");
        assertEquals(
                List.of(
                        "cellar.json: batches[0].lots[1].count",
                        "temperatures/loft.csv: line 3",
                        "temperatures/loft.csv: line 4"),
                places());
    }

    @Test
    void missingFilesAndFilesOfNoPlaceAreTold() throws IOException {
        Files.delete(folder.resolve("temperatures/loft.csv"));
        write("attic", SOUND);
        write("shed", SOUND);
        assertEquals(List.of("temperatures/loft.csv", "temperatures/attic.csv"), places());
    }

    @Test
    void aFileOfAnotherKindIsNotToldLineByLineWithoutEnd() throws IOException {
        write("loft", "time,celsius\n" + "rubbish\n".repeat(1_000));
        assertEquals(TemperatureFile.TOLD_PER_FILE + 1, places().size());
        assertEquals(
                "temperatures/loft.csv: has 980 more lines at fault; correct the first ones first",
                English.placed(CellarStore.faults(folder).get(TemperatureFile.TOLD_PER_FILE)));
    }

    @Test
    void aMissingCellarFileIsToldBesideTheTemperatures() throws IOException {
        Files.delete(folder.resolve("cellar.json"));
        Files.write(folder.resolve("temperatures/loft.csv"), "\u0000\u0001".getBytes(StandardCharsets.UTF_8));
        assertEquals(List.of("cellar.json", "temperatures/loft.csv: line 1"), places());
    }
}
