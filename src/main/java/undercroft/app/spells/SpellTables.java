package undercroft.app.spells;

import java.util.List;
import undercroft.report.CsvTable;
import undercroft.wording.Messages;

/** What a spell did, and what would become of the shelf, as tables, worded as the page words them. */
public final class SpellTables {
    private SpellTables() {}

    /** A line for each batch that a spell touched. */
    public static String of(SpellPage page, Messages messages) {
        CsvTable table = CsvTable.headed(List.of(
                messages.of("spells.table.batch"),
                messages.of("spells.table.alert"),
                messages.of("spells.table.advice"),
                messages.of("spells.table.verdict"),
                messages.of("spells.table.figures")));
        for (SpellPage.Group group : page.groups()) {
            group.lines()
                    .forEach(line -> table.text(line.name())
                            .text(messages.nameOf(line.alert()))
                            .text(group.advice())
                            .text(line.verdict())
                            .text(String.join("; ", line.figures()))
                            .endRow());
        }
        return table.text();
    }

    /** A line for each batch with bottles left. */
    public static String of(WhatIfPage page, Messages messages) {
        CsvTable table = CsvTable.headed(List.of(
                messages.of("spells.table.batch"),
                messages.of("spells.table.alert"),
                messages.of("spells.table.verdict"),
                messages.of("spells.table.fix")));
        page.lines()
                .forEach(line -> table.text(line.name())
                        .text(messages.nameOf(line.alert()))
                        .text(line.sentence())
                        .text(line.fix())
                        .endRow());
        return table.text();
    }
}
