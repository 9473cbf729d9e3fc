package rootwright.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.staticfiles.Location;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import rootwright.algebra.notation.UnreadableException;
import rootwright.desk.Desk;
import rootwright.desk.contract.RefusalContract;
import rootwright.desk.keep.KeptProfile;
import rootwright.desk.lesson.LessonDesk;
import rootwright.desk.table.StoppedOrders;
import rootwright.web.endpoint.CheckEndpoint;
import rootwright.web.endpoint.ComposeEndpoints;
import rootwright.web.endpoint.JobEndpoints;
import rootwright.web.endpoint.KeptEndpoints;
import rootwright.web.endpoint.LessonEndpoints;
import rootwright.web.endpoint.ListEndpoint;
import rootwright.web.endpoint.OrderEndpoints;
import rootwright.web.endpoint.PageEndpoint;
import rootwright.web.endpoint.PaperEndpoints;
import rootwright.web.endpoint.Reply;
import rootwright.web.endpoint.SentenceEndpoint;
import rootwright.web.endpoint.SetEndpoint;
import rootwright.web.endpoint.ShelfEndpoints;
import rootwright.web.endpoint.Solver;
import rootwright.web.endpoint.WorkEndpoint;
import rootwright.web.guard.OwnPage;
import rootwright.web.guard.SafeHeaders;
import rootwright.web.job.Jobs;
import rootwright.web.keep.RecentProblems;
import rootwright.web.reply.Fault;
import rootwright.web.reply.FaultException;

/**
 * Serves the page to the browser on this machine.
 *
 * <p>It listens on the loopback address only, answers only its own page, loads nothing from
 * outside, and keeps its working data in the coach's folder.
 */
public final class DeskServer implements AutoCloseable {

  private static final String LOOPBACK = "127.0.0.1";
  private static final String PAGE = "/rootwright/web/page";
  private static final long LARGEST_BODY = 256 * 1024;
  private static final int JOBS_AT_ONCE = 6;
  private static final int READINGS_AT_ONCE = 12;

  private final Javalin server;
  private final Jobs jobs;
  private final Jobs readings;
  private final WarmUp warmUp;

  private DeskServer(Javalin server, Desk desk, Jobs jobs, Jobs readings) {
    this.server = server;
    this.jobs = jobs;
    this.readings = readings;
    warmUp = new WarmUp(desk, jobs);
  }

  /**
   * Starts the desk: on the port of the settings, or on a free one if that is taken.
   *
   * @return the running desk
   */
  public static DeskServer start(DeskSettings settings) {
    Desk desk = new Desk();
    return start(settings, desk, desk::work);
  }

  /** Starts the desk with another solver of its problems. */
  public static DeskServer start(DeskSettings settings, Desk desk, Solver solver) {
    Jobs jobs = new Jobs(JOBS_AT_ONCE);
    Jobs readings = new Jobs(READINGS_AT_ONCE);
    Javalin server =
        Javalin.create(
            config -> {
              set(config);
              serve(config.routes, settings, desk, solver, jobs, readings);
            });
    server.start(LOOPBACK, freePort(settings.port()));
    return new DeskServer(server, desk, jobs, readings);
  }

  /** The address of the page. */
  public URI address() {
    return URI.create("http://%s:%d/".formatted(LOOPBACK, server.port()));
  }

  /**
   * Loads what the first problem of each kind would wait for, in the background and only while
   * nothing else is being worked on. Called once, if at all.
   */
  public DeskServer warmUp() {
    warmUp.start();
    return this;
  }

  /** Waits until {@link #warmUp} has ended. */
  public void awaitWarmUp() throws InterruptedException {
    warmUp.await();
  }

  /** Ends all work and stops listening. */
  @Override
  public void close() {
    warmUp.close();
    jobs.close();
    readings.close();
    server.stop();
  }

  private static void set(JavalinConfig config) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.http.maxRequestSize = LARGEST_BODY;
    config.http.prefer405over404 = true;
    config.staticFiles.add(
        files -> {
          files.directory = PAGE;
          files.location = Location.CLASSPATH;
          files.headers = Map.of("Cache-Control", "no-cache");
        });
    config.routes.before(DeskServer::admit);
    config.routes.exception(FaultException.class, (e, ctx) -> Reply.fault(ctx, e.fault()));
    config.routes.exception(
        UnreadableException.class,
        (e, ctx) -> Reply.json(ctx.status(422), RefusalContract.of(e.refusal())));
    config.routes.exception(
        HttpResponseException.class,
        (e, ctx) -> Reply.fault(ctx, new Fault(e.getStatus(), "refused", Reply.words(e))));
    config.routes.exception(Exception.class, (e, ctx) -> Reply.fault(ctx, Jobs.unexpected(e)));
  }

  private static void serve(
      RoutesConfig routes,
      DeskSettings settings,
      Desk desk,
      Solver solver,
      Jobs jobs,
      Jobs readings) {
    new PageEndpoint().addTo(routes);
    new SentenceEndpoint().addTo(routes);
    Path shelf = settings.folder().resolve("shelf.txt");
    StoppedOrders stopped = new StoppedOrders(settings.folder().resolve("stopped-orders"));
    RecentProblems recent = new RecentProblems(settings.folder());
    KeptProfile profile = new KeptProfile(settings.folder());
    new KeptEndpoints(desk, recent, profile, settings.folder()).addTo(routes);
    new SetEndpoint(desk, readings).addTo(routes);
    new WorkEndpoint(desk, solver, jobs, profile, recent).addTo(routes);
    new ListEndpoint(solver, jobs, profile).addTo(routes);
    new ComposeEndpoints(desk, jobs, shelf, stopped).addTo(routes);
    new ShelfEndpoints(desk, readings, shelf).addTo(routes);
    new PaperEndpoints(desk, jobs, settings.folder().resolve("papers"), shelf).addTo(routes);
    new CheckEndpoint(desk, jobs).addTo(routes);
    new OrderEndpoints(desk, readings, stopped).addTo(routes);
    new LessonEndpoints(new LessonDesk(), jobs, settings.folder().resolve("films")).addTo(routes);
    new JobEndpoints(jobs).addTo(routes);
  }

  private static void admit(Context context) {
    SafeHeaders.ALL.forEach(context::header);
    Optional<String> host = Optional.ofNullable(context.header("Host"));
    Optional<String> origin = Optional.ofNullable(context.header("Origin"));
    if (!OwnPage.isOwnHost(host) || !OwnPage.isOwnOrigin(origin, host)) {
      throw new FaultException(
          403, "foreign", "The desk answers only its own page on this machine.");
    }
  }

  private static int freePort(int wanted) {
    try (ServerSocket probe = new ServerSocket(wanted, 1, InetAddress.getByName(LOOPBACK))) {
      return probe.getLocalPort();
    } catch (IOException taken) {
      return 0;
    }
  }
}
