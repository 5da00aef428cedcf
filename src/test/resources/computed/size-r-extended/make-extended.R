# R 4.2.2, jsonlite 1.8.4. Usage: Rscript make-extended.R > /dev/null : writes extended.json beside this file.
# What size must answer with several sessions, a bend, one side, warm-ups, set-up and known scatter: dense matrices, non-central t of R.
suppressMessages(library(jsonlite))
day <- function(q) {
  d <- NULL; inst <- 0; minutes <- 0; s <- 0
  for (o in strsplit(q$order, "|", fixed = TRUE)[[1]]) { s <- s + 1; clock <- 0; minutes <- minutes + q$setUp; first <- TRUE
    for (p in strsplit(o, "")[[1]]) { inst <- inst + 1; if (!first) clock <- clock + q$swap; first <- FALSE; clock <- clock + q$warmUps * q$interval
      for (k in seq_len(q$pulls)) { d <- rbind(d, data.frame(s = s, inst = inst, B = as.numeric(p == "B"), t = clock)); clock <- clock + q$interval } }
    minutes <- minutes + clock }
  list(d = d, minutes = minutes)
}
precision <- function(q, d) {
  X <- outer(d$s, unique(d$s), "==") + 0; X <- cbind(X, d$B); b <- ncol(X); t <- d$t - ave(d$t, d$s)
  if (q$terms > 0) X <- cbind(X, t); if (q$terms > 1) X <- cbind(X, t^2)
  Xm <- apply(X, 2, function(x) tapply(x, d$inst, mean)); df0 <- nrow(Xm) - qr(Xm)$rank
  Z <- outer(d$inst, unique(d$inst), "==") + 0; ZZ <- Z %*% t(Z); V <- q$refitScatter^2 * ZZ + q$pullScatter^2 * diag(nrow(d)); Vi <- solve(V)
  C <- solve(t(X) %*% Vi %*% X); P <- Vi - Vi %*% X %*% C %*% t(X) %*% Vi; G <- list(ZZ, diag(nrow(d))); w <- Vi %*% X %*% C[, b]
  g <- sapply(G, function(m) sum(w * (m %*% w))); I <- matrix(0, 2, 2); for (i in 1:2) for (j in 1:2) I[i, j] <- .5 * sum((P %*% G[[i]]) * t(P %*% G[[j]]))
  known <- c(is.infinite(q$refitDf), is.infinite(q$pullDf)); I <- I + diag(ifelse(known, 0, c(q$refitDf / (2 * q$refitScatter^4), q$pullDf / (2 * q$pullScatter^4))))
  v <- C[b, b]; df <- if (all(known)) Inf else { k <- !known; 2 * v^2 / sum(g[k] * solve(I[k, k, drop = FALSE], g[k])) }
  list(se = sqrt(v), df = df, limitSe = q$refitScatter * sqrt(solve(crossprod(Xm))[b, b]), limitDf = df0 + q$refitDf)
}
power <- function(q, se, df, d) { if (q$sides == "one") { k <- qt(1 - q$alpha, df); 1 - pt(k, df, d / se) } else { k <- qt(1 - q$alpha / 2, df); 1 - pt(k, df, d / se) + pt(-k, df, d / se) } }
gain <- function(q, se, df) uniroot(function(d) power(q, se, df, d) - q$powerWanted, c(0, 36 * se), tol = 1e-12)$root
answer <- function(order, pulls, sp, sr, nur = 0, nup = 0, gainAsked = 3, alpha = .05, sides = "two", terms = 0, warmUps = 0, setUp = 0, interval = 5, swap = 20, powerWanted = .8) {
  q <- list(order = order, pulls = pulls, warmUps = warmUps, pullScatter = sp, refitScatter = sr, refitDf = nur, pullDf = nup, gain = gainAsked, alpha = alpha,
            powerWanted = powerWanted, sides = sides, terms = terms, interval = interval, swap = swap, setUp = setUp)
  y <- day(q); p <- precision(q, y$d)
  n <- sapply(strsplit(strsplit(order, "|", fixed = TRUE)[[1]], ""), function(o) c(sum(o == "A"), sum(o == "B")))
  q$refitDf <- if (is.infinite(nur)) "inf" else nur; q$pullDf <- if (is.infinite(nup)) "inf" else nup
  c(q, list(standardError = p$se, degreesOfFreedom = if (is.infinite(p$df)) "inf" else p$df, power = power(q, p$se, p$df, gainAsked),
    detectableGain = gain(q, p$se, p$df), limit = gain(q, p$limitSe, p$limitDf), minutes = y$minutes,
    leastRandomisationP = (if (all(n[1, ] == n[2, ])) 2 else 1) / prod(choose(n[1, ] + n[2, ], n[2, ]))))
}
out <- list(
  answer("ABA|BAB", 5, 1.2, .6), answer("ABA|BAB", 4, 1, 1, terms = 1), answer("ABAB|BABA|ABBA", 3, 1.5, .5, nur = 6, terms = 2),
  answer("AB|BA|AB|BA", 5, 1, .8), answer("ABABA", 5, 1.2, .6, sides = "one"), answer("ABBABAAB", 4, 1.1, .7, terms = 2, sides = "one", alpha = .1),
  answer("ABABA", 4, 1.2, .6, terms = 1, warmUps = 2, setUp = 30), answer("ABBA", 5, 1, .5, nur = Inf), answer("ABBA", 5, 1, .5, nup = Inf),
  answer("ABABABA", 2, 1, 2, terms = 1, warmUps = 1, interval = 4, swap = 35), answer("ABA", 5, 1, .5, nur = Inf, nup = Inf, terms = 1),
  answer("ABA|BAB", 3, .9, .4, nur = 8, nup = 12, warmUps = 3, setUp = 45, terms = 2, sides = "one", powerWanted = .9))
write_json(out, "extended.json", auto_unbox = TRUE, digits = 15, pretty = TRUE)
