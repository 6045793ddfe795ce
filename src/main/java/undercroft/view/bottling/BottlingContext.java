package undercroft.view.bottling;

import undercroft.app.bottling.BottlingViewModel;
import undercroft.view.kit.WindowContext;

/** What the pages of a bottling day work with. */
record BottlingContext(BottlingViewModel model, WindowContext window, Printouts printouts) {}
