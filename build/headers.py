"""What every response says beside its content. One table for our own server and for the hosts that read _headers."""

POLICY = {
    "default-src": "'none'",
    "script-src": "'self' 'wasm-unsafe-eval'",
    "worker-src": "'self'",
    "connect-src": "'self'",
    "img-src": "'self' data: blob:",
    "style-src": "'self'",
    "font-src": "'self'",
    "media-src": "'self' blob:",
    "manifest-src": "'self'",
    "base-uri": "'none'",
    "form-action": "'none'",
    "frame-ancestors": "'none'",
}
OURS = ("accelerometer", "camera", "gyroscope", "magnetometer", "microphone", "screen-wake-lock")
NOBODYS = ("display-capture", "geolocation", "midi", "payment", "serial", "usb")

HEADERS = {
    "Content-Security-Policy": "; ".join(f"{name} {value}" for name, value in POLICY.items()),
    "Permissions-Policy": ", ".join([*(f"{name}=(self)" for name in OURS), *(f"{name}=()" for name in NOBODYS)]),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cache-Control": "no-cache",
}
MANIFEST_TYPE = "application/manifest+json"


def file() -> str:
    """The text of _headers, as common static hosts read it."""
    lines = ["/*", *(f"  {name}: {value}" for name, value in HEADERS.items())]
    lines += ["/app.webmanifest", f"  Content-Type: {MANIFEST_TYPE}"]
    return "\n".join(lines) + "\n"
