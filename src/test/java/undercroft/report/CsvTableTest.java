package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CsvTableTest {
    private static List<NamedCsvRecord> read(CsvTable table) {
        return CsvReader.builder().ofNamedCsvRecord(table.text()).stream().toList();
    }

    /** RFC 4180, section 2, rules 1 and 5 to 7. */
    @Test
    void awkwardTextsAreQuotedAndReadBack() {
        for (String text : List.of("plain", "a,b", "say \"so\"", "two\nlines", "two\r\nlines", "é 🍺")) {
            CsvTable table = CsvTable.headed(List.of("name", "volumes"))
                    .text(text)
                    .number(2.4, 1)
                    .endRow();
            assertEquals(text, read(table).get(0).getField("name"));
        }
        assertEquals(
                "name\r\n\"say \"\"so\"\"\"\r\n",
                CsvTable.headed(List.of("name")).text("say \"so\"").endRow().text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+SUM(A1)", "-2+3", "@SUM(1)", "\t=1", "\r=1"})
    void aTextThatASpreadsheetWouldRunIsDefused(String text) {
        CsvTable table = CsvTable.headed(List.of("name")).text(text).endRow();
        assertEquals("'" + text, read(table).get(0).getField("name"));
    }

    @Test
    void aNumberBelowZeroStaysANumberAndWhatIsNotKnownIsEmpty() {
        CsvTable table = CsvTable.headed(List.of("a", "b", "c", "d"))
                .number(-1.25, 2)
                .number(Double.NaN, 1)
                .number(Double.POSITIVE_INFINITY, 1)
                .empty()
                .endRow();
        assertEquals(List.of("-1.25", "", "", ""), read(table).get(0).getFields());
    }

    @Test
    void aRowIsAsLongAsTheHead() {
        CsvTable table = CsvTable.headed(List.of("a", "b")).text("one");
        assertThrows(IllegalStateException.class, table::endRow);
    }
}
