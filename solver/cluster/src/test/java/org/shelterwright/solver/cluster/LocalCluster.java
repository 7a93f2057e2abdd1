package org.shelterwright.solver.cluster;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;

/** A standalone cluster on loopback: a master and workers of one core each, with authentication and encryption on. */
final class LocalCluster implements AutoCloseable {
    /** How long a master or a worker may take to start where much other work shares the machine. */
    private static final Duration START = Duration.ofMinutes(5);

    private final Path home;
    private final int port;
    private final List<Process> started = new ArrayList<>();
    private final List<Process> workers = new ArrayList<>();

    LocalCluster(Path folder, String secret, int workerCount) throws IOException, InterruptedException {
        this.home = folder;
        this.port = freePort();
        // A measurement that is asked to end leaves no cluster behind.
        Runtime.getRuntime().addShutdownHook(new Thread(this::end));
        // Executors look for the jars of Spark here.
        Path jars = Files.createDirectories(home.resolve("jars"));
        Files.createFile(home.resolve("RELEASE"));
        for (String entry : classPath().split(File.pathSeparator)) {
            Path link = jars.resolve(Path.of(entry).getFileName());
            if (entry.endsWith(".jar") && !Files.exists(link)) {
                Files.createSymbolicLink(link, Path.of(entry));
            }
        }
        Process master = start(
                "master",
                secret,
                List.of(),
                "org.apache.spark.deploy.master.Master",
                "--host",
                "127.0.0.1",
                "--port",
                Integer.toString(port),
                "--webui-port",
                "0");
        waiting("master", master).untilItSays("I have been elected leader", START);
        for (int i = 1; i <= workerCount; i++) {
            Process worker = start(
                    "worker-" + i,
                    secret,
                    List.of(),
                    "org.apache.spark.deploy.worker.Worker",
                    "--host",
                    "127.0.0.1",
                    "--webui-port",
                    "0",
                    "--cores",
                    "1",
                    "--memory",
                    "1g",
                    "--work-dir",
                    home.resolve("work-" + i).toString(),
                    url());
            workers.add(worker);
        }
        for (int i = 1; i <= workerCount; i++) {
            waiting("worker-" + i, workers.get(i - 1)).untilItSays("Successfully registered with master", START);
        }
    }

    private String url() {
        return "spark://127.0.0.1:" + port;
    }

    /** Starts a driver for a folder. */
    Process driver(String name, String otherSecret, Path folder) throws IOException {
        return start(
                name,
                otherSecret,
                List.of(
                        "-Dspark.master=" + url(),
                        "-Dspark.app.name=" + name,
                        "-Dspark.driver.host=127.0.0.1",
                        "-Dspark.driver.bindAddress=127.0.0.1",
                        "-Dspark.ui.enabled=false",
                        "-Dspark.executor.memory=700m",
                        "-Dspark.executor.cores=1",
                        "-Dspark.executor.extraClassPath=" + classPath()),
                ClusterStudy.class.getName(),
                folder.toString());
    }

    /** The process in which a worker does its jobs. */
    Optional<ProcessHandle> executor(int worker) {
        return workers.get(worker)
                .descendants()
                .filter(one -> one.info().command().orElse("").endsWith("java"))
                .findFirst();
    }

    /** Processor time so far of all in which jobs are done (s). */
    double executorSeconds() {
        return IntStream.range(0, workers.size())
                .mapToObj(this::executor)
                .flatMap(Optional::stream)
                .mapToDouble(LocalCluster::seconds)
                .sum();
    }

    /** Processor time so far of the master and of the workers, which only start and watch (s). */
    double watchingSeconds() {
        return seconds(started.get(0).toHandle())
                + workers.stream().mapToDouble(one -> seconds(one.toHandle())).sum();
    }

    /** Processor time of a process so far (s). */
    static double seconds(ProcessHandle process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO).toNanos() / 1e9;
    }

    String log(String name) throws IOException {
        return Files.readString(path(name));
    }

    /** To wait for what a process of this cluster brings about. */
    Waiting waiting(String name, Process process) {
        return new Waiting(name, process, path(name));
    }

    private Path path(String name) {
        return home.resolve(name + ".log");
    }

    private Process start(String name, String itsSecret, List<String> options, String main, String... arguments)
            throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-XX:TieredStopAtLevel=1",
                "-Dspark.authenticate=true",
                "-Dspark.authenticate.secret=" + itsSecret,
                "-Dspark.network.crypto.enabled=true"));
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), main));
        command.addAll(Arrays.asList(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(path(name).toFile());
        builder.environment().put("SPARK_HOME", home.toString());
        builder.environment().put("SPARK_SCALA_VERSION", "2.13");
        builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
        builder.environment().put("SPARK_NO_DAEMONIZE", "1");
        Process process = builder.start();
        started.add(process);
        return process;
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    private void end() {
        for (int i = started.size() - 1; i >= 0; i--) {
            started.get(i).descendants().forEach(ProcessHandle::destroyForcibly);
            started.get(i).destroyForcibly();
        }
    }

    @Override
    public void close() throws InterruptedException {
        end();
        for (Process process : started) {
            process.waitFor(20, TimeUnit.SECONDS);
        }
    }
}
