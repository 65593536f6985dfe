# Two stages: a static binary is built, and runs alone, without a shell, as
# nobody in particular. The data lies in the volume /data.
FROM golang:1.26 AS build
WORKDIR /src
COPY go.mod go.sum ./
RUN go mod download && go mod verify
COPY . .
RUN CGO_ENABLED=0 go build -trimpath -ldflags="-s -w" -o /out/troughbell ./cmd/troughbell \
 && mkdir -p /out/data

FROM scratch
COPY --from=build /etc/ssl/certs/ca-certificates.crt /etc/ssl/certs/
COPY --from=build /out/troughbell /troughbell
COPY --from=build --chown=65532:65532 /out/data /data
USER 65532:65532
ENV TROUGHBELL_DB=/data/herd.db
VOLUME /data
ENTRYPOINT ["/troughbell"]
CMD ["serve"]
