package undercroft.app.spells;

import java.util.List;
import java.util.Optional;
import undercroft.outlook.WhatIf;
import undercroft.outlook.lot.Alert;

/**
 * What would become of the shelf, in words.
 *
 * @param headline the answer that matters
 * @param lines every batch with bottles left, the worst first
 */
public record WhatIfPage(WhatIf answer, String headline, Alert alert, List<Line> lines) {
    public WhatIfPage {
        lines = List.copyOf(lines);
    }

    /**
     * What would become of a batch.
     *
     * @param sentence what it would be beside what it is
     * @param fix the coolest fix in words; empty when none is needed or there is none
     * @param fixButton what the fix does, when it can be done
     */
    public record Line(WhatIf.Change change, Alert alert, String sentence, String fix, Optional<String> fixButton) {
        public String name() {
            return change.batchName();
        }
    }
}
