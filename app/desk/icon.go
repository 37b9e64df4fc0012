package desk

import (
	"fyne.io/fyne/v2"

	"studbay/assets/icon"
)

// Icon returns the program's icon.
func Icon() fyne.Resource { return fyne.NewStaticResource("studbay.png", icon.App) }
