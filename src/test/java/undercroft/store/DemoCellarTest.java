package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

class DemoCellarTest {
    @TempDir
    Path folder;

    @Test
    void aDemoIsCopiedAsShippedWithTheTemperaturesOfItsPlaces() throws IOException {
        Path copy = folder.resolve("copy");
        DemoCellar demo = DemoCellar.of("two-shelves");
        demo.copyTo(copy);
        assertEquals(List.of(), CellarStore.faults(copy));
        assertEquals(demo.cellar(), CellarStore.read(copy));
        assertEquals(
                demo.temperatures(),
                CellarStore.temperatures(copy, demo.cellar()).celsius());
        assertEquals(
                TimeSeries.of(new long[] {1_767_225_600L, 1_767_227_400L}, new double[] {12.5, 12.375}),
                demo.temperatures().get("high"));
        assertTrue(Files.readString(copy.resolve("cellar.json")).contains("kept as shipped"));
    }

    @Test
    void aDemoDoesNotGoOverACellar() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        assertThrows(InvalidInput.class, () -> DemoCellar.of("two-shelves").copyTo(folder));
        assertEquals(RichCellar.CELLAR, CellarStore.read(folder));
    }

    @Test
    void anUnknownDemoIsRefused() {
        assertThrows(InvalidInput.class, () -> DemoCellar.of("three-shelves"));
    }
}
