package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.plot.PlotTable;
import undercroft.plot.Readout;

class PlotCsvTest {
    @Test
    void numbersHaveAPointUnknownsAreEmptyAndNoTitleIsAFormula() {
        PlotTable table = new PlotTable(
                List.of("=Carbonation, vol", "Pressure"),
                List.of(new PlotTable.Row(
                        0,
                        List.of(
                                new Readout("=Carbonation, vol", "2.40 vol", OptionalDouble.of(2.4)),
                                new Readout("Pressure", "–", OptionalDouble.empty())))));
        assertEquals("time_utc,\"'=Carbonation, vol\",Pressure\r\n1970-01-01T00:00:00Z,2.4000,\r\n", PlotCsv.of(table));
    }
}
