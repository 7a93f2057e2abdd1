package org.shelterwright.app.desk.space.eye;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import javafx.geometry.Point3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.catalog.space.Point;

class EyeTest {
    private static final Point3D MIDDLE = new Point3D(2000, 1000, 900);

    @Test
    void a_parallel_view_shows_places_where_the_painter_of_documents_does() {
        Eye eye = new Eye(33, 37, Point3D.ZERO, 0.2, false, 800, 600);
        Axonometry paper = new Axonometry(33, 37);
        Point place = Point.ofMm(1234, 567, 890);

        Eye.Seen seen = eye.project(new Point3D(1234, 567, 890));

        assertThat(seen.x()).isCloseTo(400 + paper.across(place) * 1e-3 * 0.2, within(1e-9));
        assertThat(seen.y()).isCloseTo(300 - paper.up(place) * 1e-3 * 0.2, within(1e-9));
        assertThat(seen.depth()).isCloseTo(paper.depth(place) * 1e-3, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void a_line_of_sight_meets_the_place_that_is_seen_there(boolean perspective) {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            Eye eye = eye(random, perspective);
            Point3D place = place(random);
            Eye.Seen seen = eye.project(place);
            Ray ray = eye.ray(seen.x(), seen.y());

            double off = place.subtract(ray.origin())
                    .crossProduct(ray.direction().normalize())
                    .magnitude();
            assertThat(off).as("case %d of seed 11", i).isLessThan(1e-5);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void zooming_keeps_what_lies_under_the_pointer(boolean perspective) {
        Random random = new Random(12);
        for (int i = 0; i < 200; i++) {
            Eye eye = eye(random, perspective);
            double x = random.nextDouble() * 800;
            double y = random.nextDouble() * 600;
            Point3D under = eye.onPlane(x, y);

            Eye.Seen seen = eye.zoomed(x, y, 0.5 + random.nextDouble() * 2).project(under);

            assertThat(seen.x()).as("case %d of seed 12", i).isCloseTo(x, within(1e-6));
            assertThat(seen.y()).as("case %d of seed 12", i).isCloseTo(y, within(1e-6));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void turning_about_a_place_keeps_its_spot(boolean perspective) {
        Random random = new Random(13);
        for (int i = 0; i < 200; i++) {
            Eye eye = eye(random, perspective);
            Point3D pivot = place(random);
            Eye.Seen before = eye.project(pivot);

            Eye.Seen after = eye.orbited(pivot, random.nextDouble() * 360, random.nextDouble() * 90)
                    .project(pivot);

            assertThat(after.x()).as("case %d of seed 13", i).isCloseTo(before.x(), within(1e-6));
            assertThat(after.y()).as("case %d of seed 13", i).isCloseTo(before.y(), within(1e-6));
        }
    }

    @Test
    void panning_moves_the_picture_with_the_pointer() {
        Eye eye = new Eye(120, 50, MIDDLE, 0.3, false, 800, 600);
        Eye.Seen before = eye.project(new Point3D(100, 200, 300));

        Eye.Seen after = eye.panned(17, -23).project(new Point3D(100, 200, 300));

        assertThat(after.x()).isCloseTo(before.x() + 17, within(1e-9));
        assertThat(after.y()).isCloseTo(before.y() - 23, within(1e-9));
    }

    @Test
    void perspective_and_parallel_agree_in_the_plane_of_the_target() {
        Eye parallel = new Eye(33, 37, MIDDLE, 0.2, false, 800, 600);
        Point3D there = parallel.onPlane(123, 456);

        Eye.Seen seen = parallel.withPerspective(true).project(there);

        assertThat(seen.x()).isCloseTo(123, within(1e-6));
        assertThat(seen.y()).isCloseTo(456, within(1e-6));
    }

    @Test
    void a_fixed_view_shows_all_places_inside_its_margin() {
        Eye any = new Eye(0, 0, Point3D.ZERO, 1, false, 800, 600);
        List<Point3D> places = List.of(new Point3D(0, 0, 0), new Point3D(4200, 2100, 2000), new Point3D(4200, 0, 0));
        for (FixedView view : FixedView.values()) {
            Eye eye = view.of(any, places, 40);
            for (Point3D place : places) {
                Eye.Seen seen = eye.project(place);
                assertThat(seen.x()).as(view.words()).isBetween(39.99, 760.01);
                assertThat(seen.y()).as(view.words()).isBetween(39.99, 560.01);
            }
        }
    }

    @Test
    void seen_from_above_forward_lies_to_the_right_and_left_lies_up() {
        Eye eye = FixedView.ABOVE.of(
                new Eye(0, 0, Point3D.ZERO, 1, false, 800, 600), List.of(Point3D.ZERO, new Point3D(1000, 500, 0)), 0);

        assertThat(eye.right()).isEqualTo(new Point3D(1, 0, 0));
        assertThat(eye.up()).isEqualTo(new Point3D(0, 1, 0));
    }

    @Test
    void a_move_takes_the_shorter_way_round_and_ends_where_it_should() {
        Eye from = new Eye(350, 10, MIDDLE, 0.1, false, 800, 600);
        Eye to = new Eye(20, 40, Point3D.ZERO, 0.4, false, 800, 600);
        EyeMove move = new EyeMove(from, to);

        assertThat(move.at(0)).isEqualTo(from);
        assertThat(move.at(0.5).azimuth()).isBetween(0.0, 20.0);
        assertThat(move.at(1)).isEqualTo(to);
    }

    private static Eye eye(Random random, boolean perspective) {
        return new Eye(
                random.nextDouble() * 360,
                random.nextDouble() * 90,
                place(random),
                0.05 + random.nextDouble() * 0.3,
                perspective,
                800,
                600);
    }

    private static Point3D place(Random random) {
        return new Point3D(random.nextDouble() * 4000, random.nextDouble() * 2000, random.nextDouble() * 2000);
    }
}
