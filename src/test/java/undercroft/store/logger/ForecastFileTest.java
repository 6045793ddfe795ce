package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.quantity.InvalidInput;

class ForecastFileTest {
    private static final List<ForecastFile.Day> TWO_DAYS = List.of(
            new ForecastFile.Day(LocalDate.of(2026, 7, 14), 17.5, 31),
            new ForecastFile.Day(LocalDate.of(2026, 7, 15), -1, 33.5));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "date,low,high\n2026-07-14,17.5,31\n2026-07-15,-1,33.5\n",
                "\uFEFF2026-07-15;\u22121;33,5\r\n2026-07-14;17,5;31,0\r\n",
                "day\tlow\thigh\n\n\"2026-07-14\"\t17,5\t31\n2026-07-15\t-1\t33.5"
            })
    void daysAreReadWhateverPartsTheirColumns(String text) {
        assertEquals(TWO_DAYS, ForecastFile.parse("week.csv", text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "date,low,high\n",
                "2026-07-14,17\n",
                "2026-07-32,17,20\n",
                "2026-07-14,27,20\n",
                "2026-07-14,cool,20\n",
                "2026-07-14,17,999\n",
                "2026-07-14,NaN,20\n",
                "2026-07-14,17,20\n2026-07-14,17,20\n"
            })
    void aFileThatIsNoForecastIsOneSentence(String text) {
        InvalidInput fault = assertThrows(InvalidInput.class, () -> ForecastFile.parse("week.csv", text));
        assertTrue(fault.getMessage().startsWith("week.csv"), fault.getMessage());
    }
}
