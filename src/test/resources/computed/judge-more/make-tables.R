# Usage: Rscript make-tables.R [OUTFOLDER]   (about a minute)
# Draws the tables of pulls, computes what judge must say of each by ../judge-lme4-pbkrtest/reference.R, checks that by check.R, leaves out figures
# on which the two differ, and writes a CSV and a JSON a table. Every fit is done on values shifted and scaled to order one,
# since the optimisers inside R lose digits on values near 1e6 or 1e-6; the figures are scaled back afterwards.
here <- dirname(sub("--file=", "", grep("--file=", commandArgs(FALSE), value = TRUE)))
source(file.path(here, "../judge-lme4-pbkrtest/reference.R")); source(file.path(here, "check.R"))
target <- c(commandArgs(TRUE), here)[1]

# ---- tables
# order: sessions divided by |. pulls: counted pulls per install, recycled. drift: lost per minute. unit: scale of all scatters.
table_of <- function(id, seed, order, pulls, refit, pull, gain = 2, level = 200, slope = 0, bend = 0, unit = 1, decimals = 3, interval = 4.5, swap = 22, air = NA, odd = NULL) {
  set.seed(seed); rows <- NULL; count <- c(A = 0, B = 0); at <- 0
  sessions <- strsplit(order, "|", fixed = TRUE)[[1]]
  for (s in seq_along(sessions)) {
    clock <- 0; day <- if (length(sessions) > 1) rnorm(1, 0, 3) else 0
    for (p in strsplit(sessions[s], "")[[1]]) {
      at <- at + 1; count[p] <- count[p] + 1; r <- rnorm(1, 0, refit); n <- pulls[(at - 1) %% length(pulls) + 1]
      for (k in 1:n) {
        warm <- if (is.na(air)) 0 else round(22 + 0.03 * clock + rnorm(1, 0, 1), 1)
        y <- day + gain * (p == "B") + r + slope * clock + bend * clock^2 + rnorm(1, 0, pull) - (if (is.na(air)) 0 else air * (warm - 22))
        rows <- rbind(rows, data.frame(install = paste0(p, count[p]), part = p, pull = k, session = s, minutes = clock, iat_c = warm, value = level + unit * y)); clock <- clock + interval
      }
      clock <- clock + swap
    }
  }
  if (!is.null(odd)) rows$value[odd[1]] <- rows$value[odd[1]] + unit * odd[2]
  rows$value <- round(rows$value, decimals)
  if (length(sessions) == 1) rows$session <- NULL
  if (is.na(air)) rows$iat_c <- NULL
  list(id = id, unit = unit, data = rows)
}
T <- list(); add <- function(...) T[[length(T) + 1]] <<- table_of(...)
add("u01-ABA-5-3-5", 101, "ABA", c(5, 3, 5), .8, 1.2); add("u02-ABA-5-3-5-nil", 102, "ABA", c(5, 3, 5), 2.4, 1.2, gain = 0); add("u03-ABA-10-2-10", 103, "ABA", c(10, 2, 10), 2.4, 1.2, gain = 0)
add("u04-ABA-10-2-10-gain", 104, "ABA", c(10, 2, 10), .6, 1.2, gain = 5); add("u05-ABA-2-10-2", 105, "ABA", c(2, 10, 2), 1, 1); add("u06-BAB-3-6-4", 106, "BAB", c(3, 6, 4), .7, .9, gain = 3)
add("u07-ABBA-2-7-5-3", 107, "ABBA", c(2, 7, 5, 3), .9, 1.1); add("u08-ABAB-8-1-5-2", 108, "ABAB", c(8, 1, 5, 2), .5, 1.2, gain = 4); add("u09-AABB-3-5-4-6", 109, "AABB", c(3, 5, 4, 6), .6, 1)
add("u10-ABABA-5-3-5-3-5", 110, "ABABA", c(5, 3, 5, 3, 5), .8, 1.2, gain = 3); add("u11-ABABA-10-2-10-2-10", 111, "ABABA", c(10, 2, 10, 2, 10), 1.5, 1); add("u12-ABABAB-4-6-3-5-2-7", 112, "ABABAB", c(4, 6, 3, 5, 2, 7), .7, 1)
add("u13-ABABABA-2-3-4", 113, "ABABABA", c(2, 3, 4), 1, 1.4); add("u14-BAABBA-5-2", 114, "BAABBA", c(5, 2), .3, 1.2, gain = -2); add("u15-AB-7-4", 115, "AB", c(7, 4), .5, 1.2, gain = 4)
# one pull in some or in all installs
add("s01-ABABA-singles", 121, "ABABA", 1, .8, 1.2, gain = 3); add("s02-ABBAABBA-singles", 122, "ABBAABBA", 1, .6, 1); add("s03-ABABABA-some-singles", 123, "ABABABA", c(1, 3, 1, 4), .8, 1)
add("s04-ABABA-1-5-5-5-1", 124, "ABABA", c(1, 5, 5, 5, 1), 1, 1); add("s05-ABAB-1-1-4-4", 125, "ABAB", c(1, 1, 4, 4), .5, .9); add("s06-ABA-4-1-4", 126, "ABA", c(4, 1, 4), .6, 1, gain = 4)
add("s07-ABABABABAB-one-in-two", 127, "ABABABABAB", c(1, 2), .7, 1, gain = 1.5); add("s08-ABBA-singles-drift", 128, "ABBAAB", 1, .6, 1, slope = -.01)
# sessions
add("d01-ABA-BAB-6-3", 131, "ABA|BAB", c(6, 3), .8, 1.1); add("d02-AB-BA-AB", 132, "AB|BA|AB", 5, .7, 1); add("d03-ABA-ABA-unequal", 133, "ABA|ABA", c(5, 3, 5, 2, 6, 4), 1, 1)
add("d04-ABBA-AB-BA", 134, "ABBA|AB|BA", c(3, 4, 2), .6, 1.2, slope = -.012); add("d05-four-days", 135, "ABA|BAB|ABA|BAB", c(4, 2, 5), 1.1, .9); add("d06-ABAB-A-BA", 136, "ABAB|ABA", c(4, 4, 3), .9, 1, slope = .02)
add("d07-AB-AB-singles-in-some", 137, "AB|AB|ABA", c(1, 3, 2), .5, 1); add("d08-ABABA-BABAB", 138, "ABABA|BABAB", 4, .7, 1.2, gain = 1, slope = -.015)
# many installs
add("m01-8", 141, "ABBABAAB", 4, .8, 1.1, gain = 1); add("m02-8-unequal", 142, "ABABABAB", c(3, 6, 2, 5), 1.2, .8, gain = 1.5); add("m03-9", 143, "ABABABABA", 3, .5, 1.3, gain = 0); add("m04-10", 144, "ABBAABBAAB", c(2, 5, 4), .9, 1)
add("m05-10-drift", 145, "ABABABABAB", 3, .6, 1, slope = -.01, bend = 1e-5); add("m06-12", 146, "ABABABABABAB", c(3, 2, 4), 1, 1, gain = 1); add("m07-11", 147, "ABABABABABA", c(5, 1, 3), .4, 1.2, gain = -1.2); add("m08-12-null", 148, "ABBABAABABBA", 4, 1.6, .8, gain = 0)
# offset and scale
add("x01-offset1e6-ABA-5-3-5", 151, "ABA", c(5, 3, 5), .8, 1.2, level = 1e6, gain = 3); add("x02-offset1e6-ABABA", 152, "ABABA", c(4, 6, 3), .5, 1, level = 1e6); add("x03-offset1e6-two-days", 153, "ABA|BAB", 4, 1, 1, level = 1e6)
add("x04-tiny-ABA", 154, "ABA", 5, .8, 1.2, level = 2e-4, unit = 1e-6, decimals = 10, gain = 4); add("x05-tiny-ABABA-unequal", 155, "ABABA", c(5, 3, 4), .6, 1, level = 0, unit = 1e-6, decimals = 10, gain = 2)
add("x06-tiny-drift", 156, "ABABAB", 4, .6, 1, level = 1e-6, unit = 1e-6, decimals = 10, slope = -.02); add("x07-large-unit", 157, "ABABA", c(4, 5, 3), .7, 1.1, level = 140e3, unit = 745.7, decimals = 1, gain = 3); add("x08-huge-ABBA", 158, "ABBA", c(5, 4), .5, 1, level = 3e8, unit = 1e6, decimals = 0, gain = 2)
# big and no refit scatter, nothing between, strong gains
add("r01-refit-8x", 161, "ABABA", 5, 8, 1, gain = 3); add("r02-refit-20x-unequal", 162, "ABBAB", c(6, 2, 4), 20, 1, gain = 5); add("r03-refit-0", 163, "ABABA", c(5, 4, 6), 0, 1.2, gain = 1); add("r04-refit-0-ABBA", 164, "ABBA", 6, 0, 1, gain = 0)
add("r05-refit-0-ABA-unequal", 165, "ABA", c(4, 7, 5), 0, 1.4, gain = 3); add("r06-strong-gain", 166, "ABABAB", c(3, 5), .5, .8, gain = 25); add("r07-loss", 167, "ABABA", c(5, 3), .6, 1, gain = -6); add("r08-refit-10x-pull-small", 168, "ABAB", 4, 3, .3, gain = 2)
# drift with orders that are not orthogonal to it
add("c01-ABAB-drift", 171, "ABAB", c(5, 4), .5, 1, slope = -.04); add("c02-AABB-drift", 172, "AABB", 5, .3, .9, slope = .03, gain = 4); add("c03-ABABBA-drift-unequal", 173, "ABABBA", c(2, 6, 3), .6, 1, slope = -.03)
add("c04-AABBAB-bend", 174, "AABBAB", 4, .5, 1, slope = -.05, bend = 2e-4); add("c05-BABA-drift", 175, "BABA", c(6, 3, 4), .7, 1, slope = .02); add("c06-ABBBA-drift", 176, "ABBBA", c(3, 4), .6, 1, slope = -.02, gain = 3)
# covariate read at every pull
add("k01-ABABA-air", 181, "ABABA", 5, .6, 1, air = .35, gain = 3); add("k02-ABA-air-unequal", 182, "ABA", c(5, 3, 6), .7, 1, air = .35, gain = 4); add("k03-ABBABA-air-drift", 183, "ABBABA", c(4, 2, 5), .5, 1, air = .4, slope = -.02)
add("k04-two-days-air", 184, "ABAB|ABA", 4, .6, 1, air = .3); add("k05-ABABA-air-singles", 185, "ABABABA", c(1, 4), .6, 1, air = .5)
# one wild pull
add("o01-ABABA-wild", 191, "ABABA", c(5, 4), .6, 1, odd = c(7, 9)); add("o02-ABA-wild", 192, "ABA", 6, .4, 1, odd = c(3, -8), gain = 3)

# ---- expected figures
figures <- c("estimate", "standardError", "degreesOfFreedom", "pValue")
worst <- setNames(rep(0, 4), figures); notes <- character(0)
attempt <- function(e) { warned <- NULL; v <- withCallingHandlers(tryCatch(e, error = function(x) NULL), warning = function(w) { warned <<- conditionMessage(w); invokeRestart("muffleWarning") }); if (!is.null(warned)) structure(list(), warned = warned) else v }
kept <- function(r, second, what) {
  if (is.null(r)) { notes <<- c(notes, paste(what, ": R has no answer")); return(NULL) }
  if (!is.null(attr(r, "warned"))) { notes <<- c(notes, paste(what, ": R warns:", attr(r, "warned"))); return(NULL) }
  if (!is.null(r$pullScatter) && second$s[2] < 1e-10 * max(second$s)) { notes <<- c(notes, paste(what, ": the pull variance runs to 0")); return(NULL) }
  off <- sapply(figures, function(f) abs(r[[f]] - second[[f]]) / abs(second[[f]]))
  if (any(!is.finite(off)) || any(off > c(3e-6, 3e-6, 3e-6, 3e-5))) { notes <<- c(notes, paste(what, ": the two computations differ by", paste(names(off), signif(off, 2), collapse = ", "))); return(NULL) }
  worst <<- pmax(worst, off); r
}
second <- function(...) tryCatch(check_fit(...), error = function(e) list(estimate = NaN, standardError = NaN, degreesOfFreedom = NaN, pValue = NaN, s = c(1, 1)))
scaled <- function(r, u, log_scale_terms = 0) {
  for (f in intersect(c("estimate", "standardError", "low", "high", "pullScatter", "unadjustedStandardError", "difference"), names(r))) r[[f]] <- r[[f]] * u
  if (!is.null(r$refitVariance)) r$refitVariance <- r$refitVariance * u^2
  r$criterion <- NULL; r
}
records <- list("record_0.5_4" = list(sr0 = .6, nur = 4), "record_1_20" = list(sr0 = 1.2, nur = 20), recordBoth = list(sr0 = .8, nur = 6, sp0 = 1.1, nup = 10))
judge <- function(d, u, drift, covariate, what, fixed, ninst) {
  r <- list(); need <- fixed + (drift == "linear") + 2 * (drift == "quadratic")
  if (ninst > need) {
    r$ownData <- scaled(kept(attempt(own_ref(d, drift, covariate, margin = 1.5)), second(d, drift, covariate), paste(what, "ownData")), u)
    if (is.null(covariate)) r$installMeans <- scaled(attempt(means_ref(d, drift)), u)
  }
  for (n in names(records)) {
    k <- records[[n]]; nup <- if (is.null(k$nup)) 0 else k$nup; sp0 <- if (is.null(k$sp0)) 0 else k$sp0
    r[[n]] <- scaled(kept(attempt(record_ref(d, drift, covariate, sr0 = k$sr0, nur = k$nur, sp0 = sp0, nup = nup, margin = 1.5)), second(d, drift, covariate, c(k$nur, nup), c(k$sr0, sp0)), paste(what, n)), u)
  }
  Filter(length, r)
}
for (t in T) {
  raw <- t$data; d <- raw; u <- t$unit; shift <- round(raw$value[1] / u) * u; d$value <- (raw$value - shift) / u
  sessions <- if (is.null(d$session)) 1 else length(unique(d$session)); fixed <- sessions + 1; ninst <- length(unique(d$install)); singles <- nrow(d) == ninst
  out <- list()
  for (drift in c("none", "linear", "quadratic")) {
    if (fixed + (drift == "linear") + 2 * (drift == "quadratic") > ninst) next
    r <- judge(d, u, drift, NULL, paste(t$id, drift), fixed, ninst)
    if (!singles) { tip <- attempt(tipping_ref(d, drift)); if (is.null(attr(tip, "warned"))) r["tippingScatter"] <- list(if (is.null(tip)) NULL else tip * u); r$recordF_0.6_4 <- attempt(recordf_ref(d, .6, 4, drift)) }
    out[[drift]] <- r
  }
  if (!is.null(d$iat_c)) { out$covariateIat <- judge(d, u, "none", "iat_c", paste(t$id, "iat_c"), fixed, ninst); out$covariateIatLinear <- judge(d, u, "linear", "iat_c", paste(t$id, "iat_c linear"), fixed, ninst) }
  out$randomisationP <- randomisation_ref(d); if (!singles) out$returnCheck <- scaled(return_ref(d), u)
  settings <- lapply(records, function(k) list(refitScatter = k$sr0 * u, refitDf = k$nur, pullScatter = if (is.null(k$sp0)) NULL else k$sp0 * u, pullDf = k$nup))
  settings$recordF_0.6_4 <- list(refitScatter = .6 * u, refitDf = 4)
  write.csv(format(raw, trim = TRUE, scientific = FALSE, digits = 15, drop0trailing = TRUE), file.path(target, paste0(t$id, ".csv")), row.names = FALSE, quote = FALSE)
  write_json(c(list(id = t$id, unit = u, margin = 1.5 * u, settings = lapply(settings, function(s) Filter(length, s))), out), file.path(target, paste0(t$id, ".json")), auto_unbox = TRUE, digits = I(12), pretty = TRUE, null = "null", na = "null")
  cat(t$id, "\n")
}
cat(length(T), "tables. Largest relative difference of the two computations among the figures kept:\n"); print(worst)
writeLines(notes, file.path(target, "left-out.txt")); cat(length(notes), "results left out, see left-out.txt\n")
