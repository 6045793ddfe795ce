package undercroft.view.bottling;

import undercroft.app.bottling.BottlingViewModel;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;

/** What the pages of a bottling day work with. */
record BottlingContext(BottlingViewModel model, WindowContext window, Printouts printouts) {
    Messages messages() {
        return window.messages();
    }
}
