package org.shelterwright.app.desk.space;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.app.desk.space.cut.Section;
import org.shelterwright.app.desk.space.mark.Overlay;
import org.shelterwright.catalog.space.Face;

class ShowingTest {
    @Test
    void theViewThatIsNeverCutSharesEverythingElse() {
        Showing showing = new Showing();
        Showing plan = showing.uncut();

        showing.section().set(new Section(1_000_000, Face.TOP));
        showing.show(Overlay.FLOOR_LOAD, true);
        showing.measuring().set(true);
        plan.sight().set(Sight.ALL.hiding(List.of("rack-1")));

        assertThat(plan.section().get()).isNull();
        assertThat(plan.shown()).contains(Overlay.FLOOR_LOAD);
        assertThat(plan.measuring().get()).isTrue();
        assertThat(showing.sight().get().shows("rack-1")).isFalse();
    }
}
