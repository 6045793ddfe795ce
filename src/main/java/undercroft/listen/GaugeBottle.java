package undercroft.listen;

/** The lot on one of whose bottles a live gauge sits. */
public record GaugeBottle(String batchId, String lotId) {}
