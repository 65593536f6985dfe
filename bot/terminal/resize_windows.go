package terminal

import "os"

// resizes tells nothing: there is no signal for it.
func resizes() (tell <-chan os.Signal, stop func()) { return nil, func() {} }
