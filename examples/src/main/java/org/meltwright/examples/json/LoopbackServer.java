// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.json;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * The JDK's own HTTP server on the loopback interface, set up so that one slow client stops nobody.
 *
 * <p>It has {@value #WORKERS} workers; a request that has not come in after {@value #MOST_SECONDS}
 * seconds loses its connection. The second limit is the JDK server's own and holds for the whole
 * Java process: it is read once, from the system property {@value #LIMIT}, and a value that is set
 * already stands.
 */
public final class LoopbackServer {

  /** How many requests are worked on at a time. */
  public static final int WORKERS = 8;

  /** How long a request may take to come in, in seconds, unless the property says otherwise. */
  public static final int MOST_SECONDS = 10;

  /** The system property with that time, in seconds. */
  public static final String LIMIT = "sun.net.httpserver.maxReqTime";

  private LoopbackServer() {}

  /**
   * Returns a server that is not started yet; its workers end with the Java process.
   *
   * @param port the port; 0 for any that is free
   * @return the server
   * @throws IOException if the port is taken
   */
  public static HttpServer create(int port) throws IOException {
    if (System.getProperty(LIMIT) == null) {
      System.setProperty(LIMIT, Integer.toString(MOST_SECONDS));
    }
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    server.setExecutor(workers());
    return server;
  }

  private static ExecutorService workers() {
    return Executors.newFixedThreadPool(
        WORKERS,
        task -> {
          Thread worker = new Thread(task, "http-worker");
          worker.setDaemon(true);
          return worker;
        });
  }
}
