package org.shelterwright.solver.cluster;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Properties;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.study.results.RunResult;
import org.shelterwright.layouts.study.results.StudyFolder;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The driver that {@code spark-submit} starts: runs what is left of the study in a folder. */
public final class ClusterStudy {
    private static final Logger LOG = LoggerFactory.getLogger(ClusterStudy.class);

    private ClusterStudy() {}

    /**
     * Ends the process with the status that the command line has too: 0 all done and every limit met, 1 done but some limit
     * broken or not assessed, 2 bad input, 3 the program failed.
     *
     * @param arguments the folder, as {@code study run --prepare} has made it
     */
    public static void main(String[] arguments) {
        System.exit(status(arguments));
    }

    static int status(String... arguments) {
        if (arguments.length != 1) {
            LOG.error("Name one folder, made by: shelterwright study run FILE --out FOLDER --prepare");
            return 2;
        }
        try {
            StudyFolder folder = StudyFolder.open(Path.of(arguments[0]));
            requireVersion(folder.study().program());
            SparkConf conf = new SparkConf();
            if (!conf.contains("spark.app.name")) {
                conf.setAppName("study " + folder.study().study().id());
            }
            try (JavaSparkContext context = new JavaSparkContext(conf)) {
                int done = new ClusterRunner(context, Checker.standard()).run(folder);
                LOG.info("{} runs done now.", done);
            }
            return folder.table().stream().allMatch(RunResult::allMet) ? 0 : 1;
        } catch (InputException e) {
            LOG.error(e.getMessage());
            return 2;
        } catch (Exception e) {
            // Spark throws checked exceptions that it does not declare.
            LOG.error("The study failed; what is done is kept.", e);
            return 3;
        }
    }

    /** Another version may find other places, and results of both would not fit together. */
    private static void requireVersion(String sealed) throws IOException {
        String own = version();
        if (!own.equals(sealed)) {
            throw new InputException(
                    "study.json",
                    "The study was sealed by version " + sealed + " of the program, but the jars of the cluster are of "
                            + own + ". Use those of the same version.");
        }
    }

    /** Version of these jars. */
    static String version() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = ClusterStudy.class.getResourceAsStream("version.properties")) {
            properties.load(Objects.requireNonNull(in));
        }
        return properties.getProperty("version", "");
    }
}
