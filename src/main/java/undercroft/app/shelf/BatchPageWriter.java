package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.wording.EvidenceWords;
import undercroft.wording.HandlingWords;
import undercroft.wording.Headlines;
import undercroft.wording.LearnedWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** Writes the page of a batch. */
record BatchPageWriter(CellarOutlook outlook, BatchOutlook batch, ShelfWords words) {
    static BatchPage page(CellarOutlook outlook, BatchOutlook batch, String lotId, Messages messages) {
        return new BatchPageWriter(outlook, batch, ShelfWords.of(outlook, messages)).page(lotId);
    }

    private BatchPage page(String lotId) {
        Optional<LotOutlook> lot = batch.isCapped()
                ? batch.lots().stream()
                        .filter(each -> each.lot().id().equals(lotId))
                        .findFirst()
                        .or(() -> Optional.of(batch.mainLot()))
                : Optional.empty();
        return new BatchPage(
                batch,
                lot,
                batch.batch().name(),
                lot.map(this::where).orElse(""),
                new Headlines(words).of(batch),
                lot.map(each -> new BatchFigures(batch, each, words).all()).orElse(List.of()),
                lot.map(new HandlingWords(words)::cautions).orElse(List.of()),
                new EvidenceWords(words).questions(batch),
                new EvidenceWords(words).lines(batch),
                batch.learned().map(new LearnedWords(words)::sentence),
                choices(lot),
                readings(),
                draws(),
                moves(),
                batch.isCapped() ? Optional.of(new StockWriter(outlook, batch, words).stock()) : Optional.empty(),
                batch.batch().notes());
    }

    private String where(LotOutlook lot) {
        return words.of(
                "batch.where",
                lot.place().name(),
                words.warmth(lot),
                words.name(outlook.cellar().bottleType(lot.lot().bottleTypeId())),
                words.nameOf(lot.lot().colour()),
                batch.batch().cappedAt().map(words::dayNumber).orElse(0L));
    }

    private List<BatchPage.LotChoice> choices(Optional<LotOutlook> chosen) {
        return batch.lots().stream()
                .filter(lot -> lot.left() > 0 || batch.bottlesLeft() == 0)
                .map(lot -> new BatchPage.LotChoice(lot.lot().id(), lotLabel(lot), isSame(chosen, lot)))
                .toList();
    }

    private static boolean isSame(Optional<LotOutlook> chosen, LotOutlook lot) {
        return chosen.map(each -> each.lot().id().equals(lot.lot().id())).orElse(false);
    }

    private String lotLabel(LotOutlook lot) {
        return words.of(
                "batch.lot.label",
                lot.left(),
                words.name(outlook.cellar().bottleType(lot.lot().bottleTypeId())),
                words.nameOf(lot.lot().colour()),
                lot.place().name());
    }

    private String lotName(String lotId) {
        if (batch.batch().lots().size() < 2) {
            return "";
        }
        Lot lot = batch.batch().lot(lotId);
        return words.name(outlook.cellar().bottleType(lot.bottleTypeId()));
    }

    private List<BatchPage.Row> readings() {
        return batch.batch().readings().stream()
                .sorted(Comparator.comparing(Reading::at).reversed())
                .map(this::row)
                .toList();
    }

    private BatchPage.Row row(Reading reading) {
        String what = new EvidenceWords(words).what(reading);
        String note = "";
        if (reading instanceof Reading.Gauge gauge) {
            note = gauge.gauge();
        } else if (reading instanceof Reading.Squeeze squeeze) {
            note = lotName(squeeze.lotId());
        } else if (reading instanceof Reading.Opened opened) {
            note = lotName(opened.lotId());
        }
        return new BatchPage.Row(words.dayAndTime(reading.at()), what, note, Optional.of(reading), Optional.empty());
    }

    private record Dated<T>(Lot lot, T what) {}

    private List<BatchPage.Row> draws() {
        List<Dated<Draw>> all = batch.batch().lots().stream()
                .flatMap(lot -> lot.draws().stream().map(draw -> new Dated<>(lot, draw)))
                .sorted(Comparator.comparing((Dated<Draw> each) -> each.what().at()))
                .toList();
        List<BatchPage.Row> rows = new ArrayList<>();
        int left = batch.batch().lots().stream().mapToInt(Lot::count).sum();
        for (Dated<Draw> each : all) {
            Draw draw = each.what();
            left -= draw.count();
            String what = words.of("batch.draw.row", draw.count(), draw.fate());
            String note = joined(
                    words.of("batch.draw.left", left), joined(lotName(each.lot().id()), draw.note()));
            rows.add(
                    0,
                    new BatchPage.Row(
                            words.dayAndTime(draw.at()),
                            what,
                            note,
                            Optional.empty(),
                            Optional.of(new BatchPage.Drawn(each.lot().id(), draw))));
        }
        return rows;
    }

    private List<BatchPage.Row> moves() {
        return batch.batch().lots().stream()
                .flatMap(lot -> lot.stays().stream().skip(1).map(stay -> new Dated<>(lot, stay)))
                .sorted(Comparator.comparing((Dated<Stay> each) -> each.what().from())
                        .reversed())
                .map(each -> BatchPage.Row.of(
                        words.dayAndTime(each.what().from()),
                        words.of(
                                "batch.move.row",
                                outlook.cellar().place(each.what().placeId()).name(),
                                each.what().cover()),
                        joined(
                                words.of("batch.move.bottles", each.lot().count()),
                                lotName(each.lot().id()))))
                .toList();
    }

    private String joined(String one, String other) {
        return one.isEmpty() || other.isEmpty() ? one + other : words.of("words.list.joint", one, other);
    }
}
