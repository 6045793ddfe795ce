package undercroft.plot;

/** One thing drawn on a plot; later layers lie on earlier ones. */
public sealed interface Layer permits BandLayer, LineLayer, SpanLayer, ThresholdLayer, PointLayer, StripLayer {}
