package org.shelterwright.app.workpack;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A headless Chromium, driven over its DevTools protocol. */
final class Browser implements AutoCloseable {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<JsonNode> answers = new LinkedBlockingQueue<>();
    private int last;

    private Browser(Process process, URI page) {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(page, new Listener())
                .join();
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket webSocket, CharSequence data, boolean whole) {
            text.append(data);
            if (whole) {
                answers.add(MAPPER.readTree(text.toString()));
                text.setLength(0);
            }
            webSocket.request(1);
            return null;
        }
    }

    /** The program, where it is installed. */
    static Optional<Path> program() {
        return List.of("/usr/bin/chromium", "/usr/bin/chromium-browser").stream()
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Starts it with a folder for what it keeps. */
    static Browser open(Path program, Path profile, URI page) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-dev-shm-usage",
                        "--remote-debugging-port=0",
                        "--window-size=1200,1600",
                        "--user-data-dir=" + profile,
                        page.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        Path port = profile.resolve("DevToolsActivePort");
        HttpClient client = HttpClient.newHttpClient();
        for (int i = 0; i < 600; i++) {
            if (Files.exists(port) && Files.readAllLines(port).size() > 1) {
                String at = "http://127.0.0.1:" + Files.readAllLines(port).get(0) + "/json";
                JsonNode pages = MAPPER.readTree(client.send(
                                HttpRequest.newBuilder(URI.create(at)).build(), HttpResponse.BodyHandlers.ofString())
                        .body());
                for (JsonNode one : pages) {
                    if (one.get("type").asString().equals("page")
                            && one.get("url").asString().startsWith("file:")) {
                        Browser browser = new Browser(
                                process,
                                URI.create(one.get("webSocketDebuggerUrl").asString()));
                        browser.awaitLoaded();
                        return browser;
                    }
                }
            }
            TimeUnit.MILLISECONDS.sleep(100);
        }
        process.destroyForcibly();
        throw new IllegalStateException("Chromium did not open the page.");
    }

    /** Evaluates an expression in the page. */
    JsonNode evaluate(String expression) throws InterruptedException {
        JsonNode result = send(
                "Runtime.evaluate",
                JsonNodeFactory.instance
                        .objectNode()
                        .put("expression", expression)
                        .put("awaitPromise", true)
                        .put("returnByValue", true));
        if (result.has("exceptionDetails")) {
            throw new IllegalStateException(result.get("exceptionDetails").toString());
        }
        return result.get("result").path("value");
    }

    /** Loads the page anew, as after the tablet was switched off. */
    void reload() throws InterruptedException {
        evaluate("window.stale = true");
        send("Page.reload", JsonNodeFactory.instance.objectNode());
        awaitLoaded();
    }

    /** Waits until the page has loaded that follows one marked stale. */
    void awaitLoaded() throws InterruptedException {
        for (int i = 0; i < 300; i++) {
            TimeUnit.MILLISECONDS.sleep(100);
            JsonNode ready = evaluate(
                    "!window.stale && document.readyState === 'complete' && document.querySelector('.page.shown') !== null");
            if (ready.asBoolean()) {
                return;
            }
        }
        throw new IllegalStateException("The page did not load.");
    }

    void downloadsInto(Path folder) throws InterruptedException {
        send(
                "Browser.setDownloadBehavior",
                JsonNodeFactory.instance.objectNode().put("behavior", "allow").put("downloadPath", folder.toString()));
    }

    byte[] pdf() throws InterruptedException {
        JsonNode result = send(
                "Page.printToPDF",
                JsonNodeFactory.instance
                        .objectNode()
                        .put("printBackground", true)
                        .put("preferCSSPageSize", true));
        return Base64.getDecoder().decode(result.get("data").asString());
    }

    byte[] picture() throws InterruptedException {
        JsonNode result = send("Page.captureScreenshot", JsonNodeFactory.instance.objectNode());
        return Base64.getDecoder().decode(result.get("data").asString());
    }

    private JsonNode send(String method, ObjectNode parameters) throws InterruptedException {
        int id = ++last;
        ObjectNode message = JsonNodeFactory.instance.objectNode().put("id", id).put("method", method);
        message.set("params", parameters);
        socket.sendText(MAPPER.writeValueAsString(message), true).join();
        while (true) {
            JsonNode answer = answers.poll(120, TimeUnit.SECONDS);
            if (answer == null) {
                throw new IllegalStateException("Chromium did not answer " + method + ".");
            }
            if (answer.path("id").asInt(-1) == id) {
                if (answer.has("error")) {
                    throw new IllegalStateException(method + ": " + answer.get("error"));
                }
                return answer.get("result");
            }
        }
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
