// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A browser of this machine that draws pages without a window and without a network.
 *
 * <p>It is the one that the system property {@code meltwright.browser} names, else the first found
 * on the path.
 */
record Browser(Path program, Path folder) {

  private static final List<String> NAMES =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");

  private static final int PROBE_SECONDS = 20;
  private static final int MOST_SECONDS = 60;

  /** The browser of this machine; empty if there is none, or none that works. */
  static Optional<Browser> find(Path folder) {
    String named = System.getProperty("meltwright.browser", "");
    Stream<Path> candidates =
        named.isEmpty()
            ? Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1))
                .filter(p -> !p.isEmpty())
                .flatMap(p -> NAMES.stream().map(name -> Path.of(p, name)))
            : Stream.of(Path.of(named));
    return candidates
        .filter(Files::isRegularFile)
        .filter(Files::isExecutable)
        .findFirst()
        .map(program -> new Browser(program, folder))
        .filter(Browser::draws);
  }

  /** Whether it opens a page at all: a launcher without a browser behind it does not. */
  private boolean draws() {
    try {
      Path page = Files.writeString(folder.resolve("probe.html"), "<p>drawn</p>");
      return run(page, List.of("--dump-dom"), PROBE_SECONDS).contains("<p>drawn</p>");
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** Opens a page and returns its document as it stands when all of it has run. */
  String document(Path page, String... options) throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of(options));
    all.add("--dump-dom");
    return run(page, all, MOST_SECONDS);
  }

  /** Prints a page into a file. */
  void print(Path page, Path pdf) throws IOException, InterruptedException {
    run(page, List.of("--no-pdf-header-footer", "--print-to-pdf=" + pdf), MOST_SECONDS);
  }

  private String run(Path page, List<String> options, int seconds)
      throws IOException, InterruptedException {
    Path out = Files.createTempFile(folder, "browser", ".out");
    List<String> command = new ArrayList<>(List.of(program.toString(), "--headless"));
    command.addAll(List.of("--disable-gpu", "--no-sandbox", "--no-first-run"));
    command.add("--host-resolver-rules=MAP * ~NOTFOUND");
    command.add("--user-data-dir=" + Files.createTempDirectory(folder, "profile"));
    command.addAll(options);
    command.add(page.toUri().toString());
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      throw new IOException("the browser does not come to an end: " + command);
    }
    if (process.exitValue() != 0) {
      throw new IOException("the browser ends with " + process.exitValue() + ": " + command);
    }
    return Files.readString(out, StandardCharsets.UTF_8);
  }
}
