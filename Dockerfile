# Two stages: a static binary is built, and runs alone, without a shell, as
# nobody in particular, on a root that can be read only. The data lies in the
# volume /data. The version comes from the repository's history; where that is not
# at hand, say --build-arg VERSION=... .
FROM golang:1.26.8 AS build
WORKDIR /src
COPY go.mod go.sum ./
RUN go mod download && go mod verify
COPY . .
ARG VERSION=
RUN CGO_ENABLED=0 go build -trimpath -ldflags="-s -w -X main.stamped=$VERSION" -o /out/troughbell ./cmd/troughbell \
 && mkdir -p /out/data

FROM scratch
COPY --from=build /etc/ssl/certs/ca-certificates.crt /etc/ssl/certs/
COPY --from=build /out/troughbell /troughbell
COPY --from=build --chown=65532:65532 /out/data /data
USER 65532:65532
# SQLite sorts what is large in a file; only the volume can be written.
ENV TROUGHBELL_DB=/data/herd.db SQLITE_TMPDIR=/data
VOLUME /data
HEALTHCHECK --interval=1m --timeout=10s --start-period=30s CMD ["/troughbell", "health"]
ENTRYPOINT ["/troughbell"]
CMD ["serve"]
