# Usage: Rscript make-grid.R [OUT.json]   (about a minute)
# Runs size_ref over a drawn grid of plans and writes one record a plan, figures to 15 significant digits.
here <- dirname(sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE)))
source(file.path(here, "size-reference.R"))
set.seed(20260509)

# Non-central t by quadrature over the chi distribution. R's own pt() goes over to a normal approximation where the
# non-centrality passes 37.62, and stops short of full digits in places: records it gets wrong are left out below.
pnct_quadrature <- function(q, df, delta) {
  density <- function(s) exp((1 - df / 2) * log(2) - lgamma(df / 2) + df / 2 * log(df) + (df - 1) * log(s) - df * s^2 / 2)
  centre <- sqrt(max(df - 1, 0.2) / df); spread <- 1 / sqrt(2 * df); kink <- delta / q
  cuts <- sort(unique(c(0, pmax(0, centre + spread * c(-12, -8, -5, -3, -1.5, 0, 1.5, 3, 5, 8, 12, 20)),
                        if (kink > 0) pmax(0, kink + c(-8, -3, 0, 3, 8) / abs(q)))))
  sum(sapply(seq_len(length(cuts) - 1), function(i)
    integrate(function(s) pnorm(q * s - delta) * density(s), cuts[i], cuts[i + 1], rel.tol = 1e-12, abs.tol = 1e-14, subdivisions = 1000)$value))
}
power_quadrature <- function(se, df, gain, alpha) {
  q <- qt(1 - alpha / 2, df)
  1 - pnct_quadrature(q, df, gain / se) + pnct_quadrature(-q, df, gain / se)
}
# Does the power that quadrature gives at R's figures agree with what R says it is?
sound <- function(r, limit_df, alpha, wanted) {
  if (is.null(r$power)) return(TRUE)
  limit_se <- attr(r, "limitSe")
  all(abs(c(power_quadrature(r$standardError, r$degreesOfFreedom, r$gain, alpha) - r$power,
            power_quadrature(r$standardError, r$degreesOfFreedom, r$detectableGain, alpha) - wanted,
            power_quadrature(limit_se, limit_df, r$limit, alpha) - wanted)) < 1e-8)
}

orders <- c("ABA", "BAB", "ABBA", "ABAB", "BABA", "BAAB", "AABB", "ABABA", "BABAB", "ABBAB", "AABBA", "AAABB", "ABABAB", "ABBAAB", "ABABABA",
            "ABBABAAB", "ABABABAB")
draw <- function() {
  order <- sample(orders, 1, prob = c(rep(2, 7), 4, rep(1, 9)))
  list(order = order, pulls = sample(1:10, 1), sp = sample(c(.25, .6, .8, 1, 1.2, 1.5, 2, 3.7), 1), ratio = sample(c(.1, .25, .5, 1, 2, 5), 1),
       nur = sample(c(0, 0, 2, 4, 20), 1), nup = sample(c(0, 0, 5, 10, 30), 1), alpha = sample(c(.05, .05, .01, .1), 1), power = sample(c(.8, .9), 1),
       drift = runif(1) < .4, interval = sample(c(5, 3, 4.5, 8, 12), 1), swap = sample(c(20, 0, 12.5, 45, 150), 1), stretch = sample(c(.3, .7, .95, 1.05, 1.4, 3), 1))
}
named <- function(order, pulls, sp, ratio, nur = 0, nup = 0, drift = FALSE, alpha = .05, power = .8, interval = 5, swap = 20, gain = 2)
  list(order = order, pulls = pulls, sp = sp, ratio = ratio, nur = nur, nup = nup, alpha = alpha, power = power, drift = drift, interval = interval, swap = swap, gain = gain)
chosen <- list(                                                   # plans that cannot be judged, and their neighbours that can
  named("AB", 1, 1, .5), named("AB", 5, 1.2, .5), named("AB", 10, .6, 2, nup = 30), named("BA", 4, 1, 1), named("AB", 5, 1.2, .5, drift = TRUE),
  named("ABA", 5, 1.2, .5, drift = TRUE), named("ABA", 1, 1, 1, drift = TRUE), named("BAB", 8, .8, .25, drift = TRUE, nup = 10, gain = 1),
  named("AB", 1, 1, .5, nur = 4), named("ABA", 1, 1, .5, nur = 20, drift = TRUE), named("AB", 1, 1, .5, nur = 4, nup = 10), named("AB", 6, 1, .5, nur = 8),
  named("AB", 3, 1.2, .1, nur = 2, gain = 9), named("AB", 10, 1.2, 5, nur = 20, nup = 5, gain = 25), named("ABA", 1, 1, .5), named("ABABA", 1, .6, 1, gain = 3),
  named("ABBA", 1, 1, 2, nup = 10, gain = 9), named("ABABABA", 1, 1.5, .25, drift = TRUE), named("ABAB", 1, 1, .5, nur = 4, alpha = .1),
  named("AABB", 6, 1, .5, drift = TRUE, gain = 4), named("AB", 5, 1, .5, nur = 4, drift = TRUE), named("AB", 8, 1, .5, nur = 4, nup = 10, drift = TRUE))

answer <- function(k) {
  sr <- k$ratio * k$sp
  core <- core_(k$order, k$pulls, k$sp, sr, k$nur, k$nup, k$drift, k$interval, k$swap)
  gain <- if (!is.null(k$gain)) k$gain else if (is.null(core)) 2 * k$sp else {
    # Mostly a gain that some number of pulls can reach: finding that a hundred pulls an install do not reach it takes a hundred dense fits
    # of up to 800 pulls, so plans of three installs alone are asked that.
    detectable <- gain_(core$se, core$df, k$alpha, k$power); limit <- gain_(core$limitSe, core$limitDf, k$alpha, k$power)
    signif(if (k$stretch > 1 || nchar(k$order) == 3) k$stretch * detectable else if (nchar(k$order) < 6 && limit < detectable)
      limit + k$stretch * (detectable - limit) else 1.05 * detectable, 3)
  }
  r <- size_ref(k$order, k$pulls, k$sp, sr, k$nur, k$nup, gain, k$alpha, k$power, k$drift, k$interval, k$swap)
  if (!is.null(core)) attr(r, "limitSe") <- core$limitSe
  if (!sound(r, core$limitDf, k$alpha, k$power)) stop("R's non-central t is off")
  attr(r, "limitSe") <- NULL
  append(r, list(interval = k$interval, swap = k$swap), after = 10)
}
settings <- c(chosen, replicate(280, draw(), simplify = FALSE))
out <- list(); left <- character(0)
for (k in settings) {
  r <- tryCatch(answer(k), error = function(e) conditionMessage(e))
  if (is.character(r)) { left <- c(left, r); cat("left out:", k$order, k$pulls, "ratio", k$ratio, k$nur, k$nup, k$drift, k$alpha, "-", r, "\n") } else out[[length(out) + 1]] <- r
}
target <- c(commandArgs(TRUE), file.path(here, "grid.json"))[1]
write_json(out, target, auto_unbox = TRUE, digits = I(15), pretty = TRUE, null = "null", na = "null")
cat(length(out), "records;", length(left), "left out;", sum(sapply(out, function(r) is.null(r$power))), "cannot be judged\n"); print(table(left))
